package org.hedgerow.pictures;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;

/** The attributes of SVG that a picture may have beside those of style, and their values. */
final class SvgAttributes {

  private static final Map<String, SvgValue> VALUES =
      Map.ofEntries(
          entry("id", SvgValue.ID),
          entry("href", SvgValue.HREF),
          entry("d", SvgValue.PATH),
          entry("points", SvgValue.POINTS),
          entry("transform", SvgValue.TRANSFORM),
          entry("gradientTransform", SvgValue.TRANSFORM),
          entry("viewBox", SvgValue.VIEW_BOX),
          entry("preserveAspectRatio", SvgValue.KEYWORDS),
          entry("gradientUnits", SvgValue.KEYWORD),
          entry("spreadMethod", SvgValue.KEYWORD),
          entry("clipPathUnits", SvgValue.KEYWORD),
          entry("maskUnits", SvgValue.KEYWORD),
          entry("maskContentUnits", SvgValue.KEYWORD),
          entry("offset", SvgValue.SHARE));

  /** Only paths and points are long. */
  private static final int MAX_VALUE_LENGTH = 2_000;

  private SvgAttributes() {}

  /**
   * The value as it is kept; nothing if it says nothing.
   *
   * @throws UnusablePictureException if it refers to something outside or can't be understood
   */
  static Optional<String> clean(String name, String value) {
    String stripped = value.strip();
    if (stripped.isEmpty() || stripped.equals("auto")) {
      return Optional.empty();
    }
    SvgValue allowed = VALUES.getOrDefault(name, SvgValue.COORDINATE);
    boolean mayBeLong = allowed == SvgValue.PATH || allowed == SvgValue.POINTS;
    return (mayBeLong || stripped.length() <= MAX_VALUE_LENGTH) && allowed.allows(stripped)
        ? Optional.of(stripped)
        : refuse(name, stripped);
  }

  private static Optional<String> refuse(String name, String value) {
    if (name.equals("id")) {
      return Optional.empty();
    }
    if (name.equals("href")) {
      throw SvgRefusal.reference(name, value);
    }
    throw SvgRefusal.value(name, value);
  }
}
