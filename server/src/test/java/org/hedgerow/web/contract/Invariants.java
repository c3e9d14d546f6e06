package org.hedgerow.web.contract;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * What holds of this server's traffic beyond the published schemas: see {@code invariants.yaml}.
 */
final class Invariants {
  private static final String OPEN = "x-extensible-enum";
  private static final JsonNode EXTRA = read();

  private Invariants() {}

  /** The document with its open enumerations closed and every invariant added to its schema. */
  static JsonNode addedTo(JsonNode document) {
    JsonNode stricter = document.deepCopy();
    stricter
        .findParents(OPEN)
        .forEach(schema -> ((ObjectNode) schema).set("enum", ((ObjectNode) schema).remove(OPEN)));
    stricter
        .findParents("discriminator")
        .forEach(schema -> ((ObjectNode) schema).remove("discriminator"));
    JsonNode schemas = stricter.at("/components/schemas");
    EXTRA.propertyNames().forEach(name -> add(name, schemas));
    return stricter;
  }

  private static void add(String name, JsonNode schemas) {
    if (schemas.has(name)) {
      ((ObjectNode) schemas.get(name)).withArray("allOf").add(EXTRA.get(name));
    }
  }

  /** The schemas that have invariants. */
  static List<String> schemas() {
    return List.copyOf(EXTRA.propertyNames());
  }

  private static JsonNode read() {
    try (InputStream stream = Invariants.class.getResourceAsStream("invariants.yaml")) {
      return new YAMLMapper().readTree(stream);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
