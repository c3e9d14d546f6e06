package org.hedgerow.review;

import static java.util.Objects.requireNonNullElse;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was left out of a draft, as something that can be worked with. */
public final class Given {
  private Given() {}

  /** Without what no table and no page can hold: control characters and halves of characters. */
  public static String text(@Nullable String text) {
    StringBuilder clean = new StringBuilder();
    requireNonNullElse(text, "").codePoints().filter(Given::isText).forEach(clean::appendCodePoint);
    return clean.toString().strip();
  }

  private static boolean isText(int sign) {
    return switch (Character.getType(sign)) {
      case Character.CONTROL -> sign == '\n' || sign == '\t';
      case Character.SURROGATE -> false;
      default -> true;
    };
  }

  public static <T> List<T> list(@Nullable List<T> list) {
    return list == null ? List.of() : List.copyOf(list);
  }

  @SuppressWarnings({"OptionalUsedAsFieldOrParameterType", "NullableOptional"})
  static <T> Optional<T> optional(@Nullable Optional<T> value) {
    return value == null ? Optional.empty() : value;
  }
}
