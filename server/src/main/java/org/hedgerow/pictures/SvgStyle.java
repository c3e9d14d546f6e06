package org.hedgerow.pictures;

import static java.util.Map.entry;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The properties of style that a picture may have, and their values. All of them can be written as
 * attributes, so that no style is left that a policy of browsers could block.
 */
final class SvgStyle {

  private static final Map<String, SvgValue> PROPERTIES =
      Map.ofEntries(
          entry("fill", SvgValue.PAINT),
          entry("fill-opacity", SvgValue.SHARE),
          entry("fill-rule", SvgValue.KEYWORD),
          entry("stroke", SvgValue.PAINT),
          entry("stroke-width", SvgValue.COORDINATE),
          entry("stroke-opacity", SvgValue.SHARE),
          entry("stroke-linecap", SvgValue.KEYWORD),
          entry("stroke-linejoin", SvgValue.KEYWORD),
          entry("stroke-miterlimit", SvgValue.SHARE),
          entry("stroke-dasharray", SvgValue.LENGTHS),
          entry("stroke-dashoffset", SvgValue.COORDINATE),
          entry("opacity", SvgValue.SHARE),
          entry("color", SvgValue.PLAIN_COLOUR),
          entry("stop-color", SvgValue.PLAIN_COLOUR),
          entry("stop-opacity", SvgValue.SHARE),
          entry("clip-path", SvgValue.LOCAL_PART),
          entry("clip-rule", SvgValue.KEYWORD),
          entry("mask", SvgValue.LOCAL_PART),
          entry("mask-type", SvgValue.KEYWORD),
          entry("display", SvgValue.KEYWORD),
          entry("visibility", SvgValue.KEYWORD),
          entry("overflow", SvgValue.KEYWORD),
          entry("paint-order", SvgValue.KEYWORDS),
          entry("vector-effect", SvgValue.KEYWORD),
          entry("shape-rendering", SvgValue.KEYWORD));

  private static final String ORIGIN = "transform-origin";

  /** Where the shapes stand can be said in style too, which isn't taken over. */
  private static final Set<String> PLACES =
      Set.of(
          ORIGIN,
          "transform",
          "translate",
          "rotate",
          "scale",
          "d",
          "x",
          "y",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "width",
          "height");

  private static final Set<String> FOR_ALL = Set.of("inherit", "initial", "unset");

  private static final int MAX_VALUE_LENGTH = 1_500;

  /** Of a file's own colours for printing, which stand after those for screens. */
  private static final Pattern PRINT_COLOUR = Pattern.compile("\\s+icc-color\\([^)]*\\)");

  private static final Pattern OUTSIDE =
      Pattern.compile("(?i)url\\(|image-set\\(|image\\(|src\\(|expression\\(|javascript:");

  private SvgStyle() {}

  /** Whether an attribute of this name is one of style, kept or not. */
  static boolean isProperty(String attribute) {
    return PROPERTIES.containsKey(attribute)
        || ORIGIN.equals(attribute)
        || SvgRefusal.mayRefuse(attribute);
  }

  /**
   * What is kept of declarations, by the names of the properties.
   *
   * @throws UnusablePictureException if one refers to something outside, or changes the picture in
   *     a way that can't be kept
   */
  static Map<String, String> clean(Map<String, String> declarations) {
    Map<String, String> kept = new LinkedHashMap<>();
    declarations.forEach(
        (property, value) ->
            clean(property, value.strip()).ifPresent(clean -> kept.put(property, clean)));
    return kept;
  }

  private static Optional<String> clean(String property, String value) {
    if (value.isEmpty()) {
      return Optional.empty();
    }
    requireShortAndPlain(property, value);
    String forScreens = PRINT_COLOUR.matcher(value).replaceAll("");
    SvgValue allowed = PROPERTIES.get(property);
    if (allowed != null && (allowed.allows(forScreens) || FOR_ALL.contains(forScreens))) {
      return Optional.of(SvgValue.plain(forScreens));
    }
    requireNeedless(property, forScreens);
    return Optional.empty();
  }

  /** Also of what isn't kept: nothing that draws is that long, and marks hide other letters. */
  private static void requireShortAndPlain(String property, String value) {
    if (value.length() > MAX_VALUE_LENGTH || value.contains("\\")) {
      throw SvgRefusal.value(property, value);
    }
  }

  private static void requireNeedless(String property, String value) {
    if (OUTSIDE.matcher(value).find() && SvgValue.reference(value).isEmpty()) {
      throw SvgRefusal.reference(property, value);
    }
    SvgRefusal.requireNeedless(property, value);
    if (PLACES.contains(property) || (PROPERTIES.containsKey(property) && value.contains("("))) {
      throw SvgRefusal.value(property, value);
    }
  }
}
