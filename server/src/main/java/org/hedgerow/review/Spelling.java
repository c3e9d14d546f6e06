package org.hedgerow.review;

import java.util.List;
import org.hedgerow.accounts.FieldFault;

/** What a word may be made of. */
final class Spelling {
  /** In letters. */
  static final int LONGEST = 40;

  private Spelling() {}

  static List<FieldFault> faults(String spelling) {
    if (spelling.isEmpty()) {
      return List.of(new FieldFault("spelling", "Give the word."));
    }
    if (!spelling.matches("[a-z]+")) {
      return List.of(
          new FieldFault(
              "spelling",
              "A word has only the small letters a to z, without spaces, capitals or marks."));
    }
    if (spelling.length() > LONGEST) {
      return List.of(
          new FieldFault("spelling", "A word has at most %d letters.".formatted(LONGEST)));
    }
    return List.of();
  }
}
