package org.hedgerow.seedlexicon;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The columns of a table, by name; a hyphen and a blank in a name are the same. */
record TsvHeader(List<String> names, Map<String, Integer> positions) {
  private static final Pattern COMMENT_MARK = Pattern.compile("^#\\s*");
  private static final Pattern TAB = Pattern.compile("\t");

  static TsvHeader parse(String comment) {
    List<String> names =
        TAB.splitAsStream(COMMENT_MARK.matcher(comment).replaceFirst(""))
            .map(String::strip)
            .toList();
    Map<String, Integer> positions = new HashMap<>();
    for (String name : names) {
      positions.put(normal(name), positions.size());
    }
    return new TsvHeader(names, Map.copyOf(positions));
  }

  /** The position of a column, or -1. */
  int position(String name) {
    return positions.getOrDefault(normal(name), -1);
  }

  private static String normal(String name) {
    return name.replace(' ', '-');
  }
}
