package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The columns of a table of new words. */
enum Column {
  SPELLING,
  ACCENT,
  SOUNDS,
  PICTURABLE,
  COMMONNESS,
  PARTS_OF_SPEECH,
  WANTED_FOR,
  NOTE;

  /** As it stands in the first row. */
  String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** However it is written: capitals, spaces and underscores don't matter. */
  static Optional<Column> named(String name) {
    String label = name.strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }

  static String all() {
    return Arrays.stream(values()).map(Column::label).collect(joining(", "));
  }

  /** The column that a part of a proposal comes from. */
  static Column of(String field) {
    if (field.startsWith("labels.")) {
      return named(field.substring("labels.".length()).replace("OfS", "-of-s")).orElse(NOTE);
    }
    if (field.startsWith("pronunciations")) {
      return field.endsWith("accent") ? ACCENT : SOUNDS;
    }
    return named(field.replace("wantedFor", WANTED_FOR.label())).orElse(SPELLING);
  }
}
