package org.hedgerow.review;

import static java.util.stream.Collectors.joining;

import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.FieldError;

/** What is said about accents that nobody knows. */
final class Accented {
  private Accented() {}

  static FieldError unknown(String field, String accent, Lexicon lexicon) {
    String known =
        lexicon.accents().stream().map(each -> each.accent().tag()).collect(joining(", "));
    return new FieldError(
        field,
        accent.isEmpty()
            ? "Say which accent it is: %s.".formatted(known)
            : "“%s” is no accent of this bank. There are %s.".formatted(accent, known));
  }
}
