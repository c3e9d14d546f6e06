package org.hedgerow.review.curriculum;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.hedgerow.operations.FieldError;

/** What sets of rules, sequences and sight words have in common. */
final class NamedSets {
  private static final int MAX_TITLE_LENGTH = 80;
  private static final int MAX_NOTE_LENGTH = 300;

  private NamedSets() {}

  static List<FieldError> errors(String name, String title, String note) {
    List<FieldError> errors = new ArrayList<>();
    if (!name.matches("[a-z]{2,20}")) {
      errors.add(
          new FieldError("name", "The name for addresses has 2 to 20 small letters a to z."));
    }
    if (title.isEmpty() || title.codePointCount(0, title.length()) > MAX_TITLE_LENGTH) {
      errors.add(new FieldError("title", "Say what it is called, in 1 to 80 characters."));
    }
    if (note.codePointCount(0, note.length()) > MAX_NOTE_LENGTH) {
      errors.add(new FieldError("note", "At most %d characters.".formatted(MAX_NOTE_LENGTH)));
    }
    return errors;
  }

  /** Tells contents apart that people might confuse; it isn't meant against anybody. */
  static String mark(Object content) {
    CRC32 sum = new CRC32();
    sum.update(content.toString().getBytes(UTF_8));
    return Long.toHexString(sum.getValue());
  }
}
