package org.hedgerow.fuzz;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ContainerNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Changes one thing of a JSON value, so that it is still JSON and no longer what is expected. */
final class TreeMutation {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Dice dice;

  TreeMutation(Dice dice) {
    this.dice = dice;
  }

  /** The value changed; the one given stays as it is. */
  JsonNode mutated(JsonNode value) {
    if (value.isEmpty() || dice.percent(5)) {
      return nasty(value);
    }
    JsonNode copy = value.deepCopy();
    List<ContainerNode<?>> containers = new ArrayList<>();
    collect(copy, containers);
    change(dice.any(containers));
    return copy;
  }

  private static void collect(JsonNode value, List<ContainerNode<?>> containers) {
    if (value instanceof ContainerNode<?> container && !value.isEmpty()) {
      containers.add(container);
      value.values().forEach(each -> collect(each, containers));
    }
  }

  private void change(ContainerNode<?> container) {
    if (container instanceof ObjectNode object) {
      changeMember(object);
    } else if (container instanceof ArrayNode array) {
      changeItem(array);
    }
  }

  private void changeMember(ObjectNode object) {
    String name = dice.any(List.copyOf(object.propertyNames()));
    switch (dice.below(6)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name + "s", object.get(name));
      case 2 -> object.set(dice.any(Nasty.TEXTS), nasty(object.get(name)));
      default -> object.set(name, nasty(object.get(name)));
    }
  }

  private void changeItem(ArrayNode array) {
    int index = dice.below(array.size());
    switch (dice.below(5)) {
      case 0 -> array.remove(index);
      case 1 -> array.insert(index, NODES.arrayNode());
      case 2 -> array.add(array.get(index).deepCopy());
      default -> array.set(index, nasty(array.get(index)));
    }
  }

  private JsonNode nasty(JsonNode value) {
    return switch (dice.below(14)) {
      case 0 -> NODES.nullNode();
      case 1 -> NODES.booleanNode(dice.percent(50));
      case 2 -> NODES.numberNode(dice.any(List.of(-1, 0, 1, Integer.MAX_VALUE, Integer.MIN_VALUE)));
      case 3 -> NODES.numberNode(BigInteger.TEN.pow(dice.any(List.of(10, 19, 300))));
      case 4 -> NODES.numberNode(new BigDecimal(dice.any(List.of("1.5", "1e400", "-1e-400"))));
      case 5 -> NODES.arrayNode();
      case 6 -> NODES.objectNode();
      case 7 -> NODES.arrayNode().add(NODES.arrayNode()).add(NODES.arrayNode().add("oo 2"));
      case 8 -> NODES.arrayNode().add(value.deepCopy());
      case 9 -> many(value);
      case 10 -> NODES.stringNode(value.toString());
      default -> NODES.stringNode(dice.any(Nasty.TEXTS));
    };
  }

  private JsonNode many(JsonNode value) {
    ArrayNode many = NODES.arrayNode();
    int count = dice.any(List.of(2, 101, 501, 1001));
    for (int i = 0; i < count; i++) {
      many.add(value);
    }
    return many;
  }
}
