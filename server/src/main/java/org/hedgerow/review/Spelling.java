package org.hedgerow.review;

import java.util.List;
import org.hedgerow.operations.FieldError;

/** What a word may be made of. */
final class Spelling {
  /** In letters. */
  static final int MAX_LENGTH = 40;

  private Spelling() {}

  static List<FieldError> errors(String spelling) {
    if (spelling.isEmpty()) {
      return List.of(new FieldError("spelling", "Give the word."));
    }
    if (!spelling.matches("[a-z]+")) {
      return List.of(
          new FieldError(
              "spelling",
              "A word has only the small letters a to z, without spaces, capitals or marks."));
    }
    if (spelling.length() > MAX_LENGTH) {
      return List.of(
          new FieldError("spelling", "A word has at most %d letters.".formatted(MAX_LENGTH)));
    }
    return List.of();
  }
}
