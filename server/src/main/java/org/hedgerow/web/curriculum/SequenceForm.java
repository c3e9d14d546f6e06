package org.hedgerow.web.curriculum;

import java.util.Map;
import org.hedgerow.review.curriculum.SequenceDraft;

/**
 * An order of teaching to be written.
 *
 * @param lines its steps as they were typed
 * @param seen the mark of what stands there; empty for a new one
 * @param isNew whether its name is to be chosen
 * @param former how it can be filled in as it was
 * @param conflict that somebody else was faster, or an empty text
 * @param errors by field
 */
record SequenceForm(
    String token,
    SequenceDraft draft,
    String lines,
    String seen,
    boolean isNew,
    EarlierVersion former,
    String conflict,
    Map<String, String> errors) {
  String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
