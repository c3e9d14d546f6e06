package org.hedgerow.web.contract;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLDecoder;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A path as the document lists it.
 *
 * @param text such as {@code /api/v1/words/{spelling}}
 * @param names of the parameters in it
 */
record PathTemplate(String text, List<String> names, Pattern pattern) {
  private static final Pattern PARAMETER = Pattern.compile("\\{([^}]+)}");
  private static final Pattern BETWEEN = Pattern.compile("[^{}]+(?=\\{|$)");

  static PathTemplate of(String text) {
    List<String> names = PARAMETER.matcher(text).results().map(match -> match.group(1)).toList();
    String literals =
        BETWEEN
            .matcher(text)
            .replaceAll(match -> Matcher.quoteReplacement(Pattern.quote(match.group())));
    return new PathTemplate(
        text, names, Pattern.compile(PARAMETER.matcher(literals).replaceAll("([^/]+)")));
  }

  boolean matches(String path) {
    return pattern.matcher(path).matches();
  }

  /** The parameters in a path that matches, decoded. */
  Map<String, String> values(String path) {
    Matcher matcher = pattern.matcher(path);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(path + " isn't " + text);
    }
    Map<String, String> values = new TreeMap<>();
    for (int index = 0; index < names.size(); index++) {
      values.put(names.get(index), decoded(matcher.group(index + 1)));
    }
    return values;
  }

  /** In a path a plus sign is a plus sign. */
  private static String decoded(String segment) {
    return URLDecoder.decode(segment.replace("+", "%2B"), UTF_8);
  }
}
