package org.hedgerow.web.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing in which what somebody sent differs from what is there.
 *
 * @param field the path to it, as in {@code proposal.pronunciations[0].sounds}
 * @param yours as it was sent; left out where it wasn't
 * @param present as it is; left out where it isn't
 */
public record FieldDifference(String field, Optional<JsonNode> yours, Optional<JsonNode> present) {

  public static FieldDifference revision(int yours, int present) {
    return new FieldDifference(
        "revision", Optional.of(IntNode.valueOf(yours)), Optional.of(IntNode.valueOf(present)));
  }

  /** All the differences between two objects, in the order of their members. */
  public static List<FieldDifference> between(JsonNode yours, JsonNode present) {
    List<FieldDifference> all = new ArrayList<>();
    compare("", yours, present, all);
    return List.copyOf(all);
  }

  private static void compare(
      String field, JsonNode yours, JsonNode present, List<FieldDifference> differing) {
    if (yours.equals(present)) {
      return;
    }
    if (yours.isObject() && present.isObject()) {
      for (String name : names(yours, present)) {
        String path = field.isEmpty() ? name : field + "." + name;
        compare(path, yours.path(name), present.path(name), differing);
      }
    } else if (yours.isArray() && present.isArray()) {
      for (int i = 0; i < Math.max(yours.size(), present.size()); i++) {
        compare("%s[%d]".formatted(field, i), yours.path(i), present.path(i), differing);
      }
    } else {
      differing.add(new FieldDifference(field, given(yours), given(present)));
    }
  }

  private static Set<String> names(JsonNode one, JsonNode other) {
    Set<String> names = new LinkedHashSet<>();
    one.fieldNames().forEachRemaining(names::add);
    other.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static Optional<JsonNode> given(JsonNode node) {
    return Optional.of(node).filter(each -> !each.isMissingNode());
  }
}
