package org.hedgerow.seedlexicon;

import java.util.Arrays;
import java.util.function.Function;

/** Enum values as tables write them. */
final class Labels {

  private Labels() {}

  static <E extends Enum<E>> E of(
      TsvRow row, String column, E[] values, Function<E, String> label) {
    String text = row.required(column);
    return Arrays.stream(values)
        .filter(value -> label.apply(value).equals(text))
        .findFirst()
        .orElseThrow(
            () -> row.mistake("whose column \"%s\" is unknown: \"%s\"".formatted(column, text)));
  }
}
