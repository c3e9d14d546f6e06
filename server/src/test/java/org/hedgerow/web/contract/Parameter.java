package org.hedgerow.web.contract;

import java.util.Arrays;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A parameter of an operation. */
public record Parameter(Place place) {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  public String name() {
    return place.child("name").node().asString();
  }

  public boolean isRequired() {
    return place.child("required").node().asBoolean(false);
  }

  /** What was sent, as the kind of value that its schema speaks of. */
  JsonNode value(String sent) {
    Place schema = schema();
    return isList() ? list(schema, sent) : single(schema, sent);
  }

  /** Whether it may come several times, which is the same as once with commas. */
  boolean isList() {
    return schema().child("type").says("array");
  }

  /** The schema itself, also where it only gains a default or a description here. */
  private Place schema() {
    Place schema = place.child("schema");
    Place base = schema.child("allOf").child("0");
    return base.exists() ? base : schema;
  }

  private static JsonNode list(Place schema, String sent) {
    ArrayNode list = NODES.arrayNode();
    Arrays.stream(sent.split(",", -1))
        .filter(item -> !sent.isEmpty())
        .forEach(item -> list.add(single(schema.child("items"), item)));
    return list;
  }

  /** A text that is neither number nor true or false stays a text, for the schema to refuse. */
  private static JsonNode single(Place schema, String sent) {
    if (schema.child("type").says("boolean") && sent.matches("true|false")) {
      return NODES.booleanNode(Boolean.parseBoolean(sent));
    }
    boolean number = schema.child("type").says("integer") && sent.matches("-?[0-9]{1,18}");
    return number ? NODES.numberNode(Long.parseLong(sent)) : NODES.stringNode(sent);
  }
}
