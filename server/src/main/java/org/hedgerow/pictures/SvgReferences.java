package org.hedgerow.pictures;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the parts of a picture take from each other by their ids. A few lines of parts that use
 * parts can come to billions of shapes, so they are counted as if all were drawn.
 */
final class SvgReferences {

  private static final long MAX_DRAWN = 20_000;
  private static final int MAX_LEVELS = 30;

  private final Map<String, SvgElement> byId = new HashMap<>();
  private final Map<String, Long> drawnById = new HashMap<>();
  private final Set<String> open = new HashSet<>();

  private SvgReferences(SvgElement root) {
    root.all().forEach(element -> element.attribute("id").ifPresent(id -> byId.put(id, element)));
  }

  /**
   * @throws UnusablePictureException if a part is missing, a part uses itself, or all that is drawn
   *     is too much
   */
  static void check(SvgElement root) {
    new SvgReferences(root).drawn(root);
  }

  private long drawn(SvgElement element) {
    long drawn = 1;
    for (SvgElement child : element.children()) {
      drawn += drawn(child);
    }
    for (String id : references(element)) {
      drawn += drawn(id, element);
    }
    if (drawn > MAX_DRAWN) {
      throw SvgRefusal.large(
          "repeats its parts until there are more than %,d".formatted(MAX_DRAWN));
    }
    return drawn;
  }

  private long drawn(String id, SvgElement user) {
    Long known = drawnById.get(id);
    if (known != null) {
      return known;
    }
    SvgElement used = byId.get(id);
    if (used == null) {
      throw SvgRefusal.refusal(
          "a part that is missing (#%s, for <%s>)".formatted(SvgRefusal.quote(id), user.name()),
          "Save it again as plain SVG, or export the picture as PNG, and upload that file.");
    }
    if (open.size() == MAX_LEVELS) {
      throw SvgRefusal.large("has parts made of parts, more than %d deep".formatted(MAX_LEVELS));
    }
    if (!open.add(id)) {
      throw SvgRefusal.large("has a part that is made of itself (#" + SvgRefusal.quote(id) + ")");
    }
    long drawn = drawn(used);
    open.remove(id);
    drawnById.put(id, drawn);
    return drawn;
  }

  private static List<String> references(SvgElement element) {
    return element.attributes().entrySet().stream()
        .flatMap(attribute -> reference(attribute.getKey(), attribute.getValue()))
        .toList();
  }

  private static Stream<String> reference(String name, String value) {
    return name.equals("href") ? Stream.of(value.substring(1)) : SvgValue.reference(value).stream();
  }
}
