package org.hedgerow.review;

import static java.util.Objects.requireNonNullElse;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was left out of a draft, as something that can be worked with. */
final class Given {
  private Given() {}

  static String text(@Nullable String text) {
    return requireNonNullElse(text, "").strip();
  }

  static <T> List<T> list(@Nullable List<T> list) {
    return list == null ? List.of() : List.copyOf(list);
  }

  @SuppressWarnings({"OptionalUsedAsFieldOrParameterType", "NullableOptional"})
  static <T> Optional<T> optional(@Nullable Optional<T> value) {
    return value == null ? Optional.empty() : value;
  }
}
