package org.hedgerow.review.curriculum;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Catalogue;

/**
 * A named set as somebody writes it, with whatever is wrong in it.
 *
 * @param <T> what it is when nothing is wrong
 */
public sealed interface SetDraft<T extends NamedSet>
    permits RulesDraft, SequenceDraft, SightWordsDraft {
  int MAX_TITLE_LENGTH = 80;
  int MAX_NOTE_LENGTH = 300;

  String name();

  String title();

  String note();

  /** What is wrong in what only sets of this kind have. */
  List<FieldError> contentErrors(Catalogue catalogue);

  /** What only sets of this kind have, for the audit record: a name and JSON values. */
  Map<String, Object> content();

  /** The set that it describes; only if there are no errors. */
  T toSet(Catalogue catalogue);

  default List<FieldError> errors(Catalogue catalogue) {
    List<FieldError> errors = new ArrayList<>();
    if (!name().matches("[a-z]{2,20}")) {
      errors.add(
          new FieldError("name", "The name for addresses has 2 to 20 small letters a to z."));
    }
    if (title().isEmpty() || title().codePointCount(0, title().length()) > MAX_TITLE_LENGTH) {
      errors.add(new FieldError("title", "Say what it is called, in 1 to 80 characters."));
    }
    if (note().codePointCount(0, note().length()) > MAX_NOTE_LENGTH) {
      errors.add(new FieldError("note", "At most %d characters.".formatted(MAX_NOTE_LENGTH)));
    }
    errors.addAll(contentErrors(catalogue));
    return errors;
  }

  /** Another for every other content, so that nobody overwrites what they haven't seen. */
  default String mark() {
    CRC32 sum = new CRC32();
    sum.update(toString().getBytes(UTF_8));
    return Long.toHexString(sum.getValue());
  }
}
