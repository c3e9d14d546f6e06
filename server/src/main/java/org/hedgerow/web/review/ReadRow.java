package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.review.Content;
import org.hedgerow.web.problems.ParameterError;

/**
 * A row that was understood, or what is wrong with it.
 *
 * @param content empty if there are errors
 * @param accent in which it is said
 * @param sounds as they were given or guessed; may be empty
 * @param guessed whether the sounds are a guess
 * @param errors by the names of columns
 */
record ReadRow(
    TableRow row,
    Optional<Content> content,
    String accent,
    String sounds,
    boolean guessed,
    List<ParameterError> errors) {
  ReadRow {
    errors = List.copyOf(errors);
  }

  String spelling() {
    return row.cell(Column.SPELLING).orElse("");
  }
}
