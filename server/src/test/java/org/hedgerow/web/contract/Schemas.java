package org.hedgerow.web.contract;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Holds values against the schemas of a document, which are JSON Schema 2020-12. */
final class Schemas {
  private static final String DOCUMENT = "https://hedgerow.org/openapi";

  private final SchemaRegistry registry;

  Schemas(ApiDocument document) {
    Map<String, String> documents =
        Map.of(DOCUMENT, Invariants.addedTo(document.root().node()).toString());
    this.registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(documents));
  }

  /** What is wrong with a value, in words; nothing if it is as its schema says. */
  List<String> breaches(Place schema, JsonNode value) {
    return registry.getSchema(location(schema)).validate(value).stream()
        .map(Schemas::words)
        .toList();
  }

  private static SchemaLocation location(Place schema) {
    return SchemaLocation.of(DOCUMENT + "#" + schema.pointer());
  }

  private static String words(Error error) {
    String place = error.getInstanceLocation().toString();
    return place.isEmpty() ? error.getMessage() : place + " " + error.getMessage();
  }
}
