package org.hedgerow.pictures;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a value of an attribute or a property may look like. Nothing else is written, so that no
 * trick of notation can come through.
 */
final class SvgValue {

  private static final String NUMBER = "[+-]?(?:\\d++(?:\\.\\d*+)?|\\.\\d++)(?:[eE][+-]?\\d++)?";
  private static final String LENGTH = NUMBER + "(?:px|pt|pc|mm|cm|in|em|ex|%)?";
  private static final String COLOUR =
      "#(?:[0-9a-fA-F]{3,4}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})"
          + "|[a-zA-Z]{3,25}"
          + "|(?:rgb|hsl)a?\\([0-9a-z.,%/\\s+-]{5,60}\\)";
  private static final String NAME = "[\\p{L}_][\\p{L}\\p{N}_.:-]{0,127}";
  private static final String LOCAL = "url\\(\\s*(['\"]?)#(" + NAME + ")\\1\\s*\\)";

  static final SvgValue ID = of(NAME);
  static final SvgValue HREF = of("#" + NAME);
  static final SvgValue COORDINATE = of(LENGTH);
  static final SvgValue SHARE = of(NUMBER + "%?");
  static final SvgValue LENGTHS = of(LENGTH + "(?:[\\s,]+" + LENGTH + "){0,100}|none");
  static final SvgValue VIEW_BOX = of("(?:" + NUMBER + "[\\s,]+){3}" + NUMBER);
  static final SvgValue PLAIN_COLOUR = of(COLOUR);
  static final SvgValue PAINT = of(COLOUR + "|" + LOCAL + "(?:\\s+(?:" + COLOUR + "))?");
  static final SvgValue LOCAL_PART = of(LOCAL + "|none");
  static final SvgValue KEYWORD = of("[a-zA-Z-]{1,30}");
  static final SvgValue KEYWORDS = of("[a-zA-Z\\s-]{1,60}");
  static final SvgValue PATH = of("[MmLlHhVvCcSsQqTtAaZz\\d\\s.,eE+-]*");
  static final SvgValue POINTS = of("[\\d\\s.,eE+-]*");
  static final SvgValue TRANSFORM =
      of(
          "(?:(?:matrix|translate|scale|rotate|skewX|skewY)\\s*\\([\\d\\s.,eE+-]{1,300}\\)[\\s,]*+)"
              + "{0,50}+");

  private static final Pattern LOCAL_REFERENCE = Pattern.compile(LOCAL);

  private final Pattern pattern;

  private SvgValue(Pattern pattern) {
    this.pattern = pattern;
  }

  private static SvgValue of(String pattern) {
    return new SvgValue(Pattern.compile(pattern));
  }

  boolean allows(String value) {
    return pattern.matcher(value).matches();
  }

  /** The id of the part of the picture that a value names, as in {@code url(#id)}. */
  static Optional<String> reference(String value) {
    Matcher matcher = LOCAL_REFERENCE.matcher(value);
    return matcher.find() ? Optional.of(matcher.group(2)) : Optional.empty();
  }

  /** With the reference in its plainest form. */
  static String plain(String value) {
    return LOCAL_REFERENCE.matcher(value).replaceFirst("url(#$2)");
  }
}
