package org.hedgerow.fuzz;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.web.contract.Place;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Values that a schema allows, by its types, limits, choices and patterns. Texts come from the
 * schema's examples and from a vocabulary.
 */
final class SchemaValues {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final int DEEPEST = 6;

  private final Vocabulary vocabulary;
  private final Dice dice;

  SchemaValues(Vocabulary vocabulary, Dice dice) {
    this.vocabulary = vocabulary;
    this.dice = dice;
  }

  JsonNode value(Place schema) {
    return value(schema.target(), DEEPEST);
  }

  private JsonNode value(Place schema, int depth) {
    JsonNode node = schema.node();
    if (node.has("const")) {
      return node.get("const");
    }
    List<JsonNode> given = given(node);
    if (!given.isEmpty() && dice.percent(60)) {
      return dice.any(given);
    }
    List<Place> choices =
        Stream.of("oneOf", "anyOf").flatMap(name -> schema.child(name).members()).toList();
    return choices.isEmpty() ? typed(schema, depth) : value(dice.any(choices), depth);
  }

  /** What the schema itself shows as values. */
  private static List<JsonNode> given(JsonNode schema) {
    JsonNode choices = schema.has("enum") ? schema.get("enum") : schema.path("examples");
    return choices.isArray() ? List.copyOf(choices.values()) : List.of();
  }

  private JsonNode typed(Place schema, int depth) {
    JsonNode type = schema.node().path("type");
    return switch (type.isArray() ? type.get(0).asString() : type.asString("")) {
      case "object" -> object(schema, depth);
      case "array" -> array(schema, depth);
      case "integer", "number" -> NODES.numberNode(number(schema.node()));
      case "boolean" -> NODES.booleanNode(dice.percent(50));
      default -> NODES.stringNode(dice.any(vocabulary.fitting(schema.node())));
    };
  }

  private ObjectNode object(Place schema, int depth) {
    ObjectNode object = NODES.objectNode();
    List<String> required =
        schema.node().path("required").values().stream().map(JsonNode::asString).toList();
    Place properties = schema.child("properties");
    for (String name : properties.names()) {
      if (required.contains(name) || (depth > 0 && dice.percent(50))) {
        object.set(name, value(properties.child(name), depth - 1));
      }
    }
    return object;
  }

  private ArrayNode array(Place schema, int depth) {
    ArrayNode array = NODES.arrayNode();
    int least = schema.node().path("minItems").asInt(0);
    int count = depth <= 0 ? least : dice.between(least, least + 3);
    for (int i = 0; i < count; i++) {
      array.add(value(schema.child("items"), depth - 1));
    }
    return array;
  }

  private int number(JsonNode schema) {
    int least = schema.path("minimum").asInt(0);
    int most = schema.path("maximum").asInt(Integer.MAX_VALUE);
    return dice.percent(90) ? dice.between(least, Math.min(most, least + 8)) : most;
  }
}
