package org.hedgerow.web.curriculum;

import java.util.Map;
import org.hedgerow.review.curriculum.SetDraft;

/**
 * A named set to be written.
 *
 * @param seen the mark of what stands there; empty for a new one
 * @param isNew whether its name is to be chosen
 * @param former how it can be filled in as it was
 * @param conflict that somebody else was faster, or an empty text
 * @param errors by field
 */
record SetForm<D extends SetDraft<?>>(
    String token,
    D draft,
    String seen,
    boolean isNew,
    EarlierVersion former,
    String conflict,
    Map<String, String> errors) {
  String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
