package org.hedgerow.pictures;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Builds the elements anew, with known attributes and values. All style becomes attributes: first
 * what was an attribute, over it the style sheets, over them the element's own style (CSS Cascading
 * and Inheritance, level 4, 6.1; SVG 2, 6.6).
 */
final class SvgCleaning {

  private final SvgStyleSheet styleSheet;
  private final Set<String> ids = new HashSet<>();

  SvgCleaning(SvgStyleSheet styleSheet) {
    this.styleSheet = styleSheet;
  }

  /**
   * @throws UnusablePictureException naming what can't be kept
   */
  SvgElement clean(SvgElement element) {
    Map<String, String> attributes = new TreeMap<>(style(element));
    attributes.putAll(others(element));
    List<SvgElement> children = element.children().stream().map(this::clean).toList();
    return new SvgElement(element.name(), attributes, children);
  }

  private Map<String, String> others(SvgElement element) {
    Map<String, String> kept = new LinkedHashMap<>();
    for (String name : SvgVocabulary.attributes(element.name()).orElseThrow()) {
      keep(kept, name, element);
    }
    keep(kept, "transform", element);
    keep(kept, "id", element);
    requireNoOtherReference(element, kept);
    if (kept.containsKey("id") && !ids.add(String.valueOf(kept.get("id")))) {
      kept.remove("id");
    }
    return kept;
  }

  private static void keep(Map<String, String> kept, String name, SvgElement element) {
    element
        .attribute(name)
        .flatMap(value -> SvgAttributes.clean(name, value))
        .ifPresent(value -> kept.put(name, value));
  }

  /** Elsewhere it does nothing; but what names something outside isn't passed over in silence. */
  private static void requireNoOtherReference(SvgElement element, Map<String, String> kept) {
    if (!kept.containsKey("href")) {
      element.attribute("href").ifPresent(value -> SvgAttributes.clean("href", value));
    }
  }

  private Map<String, String> style(SvgElement element) {
    Map<String, String> attributes = new LinkedHashMap<>();
    element.attributes().forEach((name, value) -> addProperty(attributes, name, value));
    String own = element.attribute("style").orElse("");
    Map<String, String> style = SvgStyle.clean(attributes);
    style.putAll(styleSheet.of(element));
    style.putAll(SvgStyle.clean(SvgStyleSheet.declarations(element.name(), own)));
    return style;
  }

  private static void addProperty(Map<String, String> written, String name, String value) {
    if (SvgStyle.isProperty(name)) {
      written.put(name, value);
    }
  }
}
