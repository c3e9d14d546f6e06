package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.Map;
import org.hedgerow.review.curriculum.RulesDraft;

/**
 * A set of reading rules to be written.
 *
 * @param seen the mark of what stands there; empty for a new one
 * @param isNew whether its name is to be chosen
 * @param former how it can be filled in as it was
 * @param conflict that somebody else was faster, or an empty text
 * @param errors by field
 */
record RulesForm(
    String token,
    RulesDraft draft,
    String seen,
    boolean isNew,
    EarlierVersion former,
    String conflict,
    Map<String, String> errors,
    List<Choice> choices) {
  /**
   * @param name of the rule
   * @param meaning what a teacher allows by it
   */
  record Choice(String name, String meaning, boolean on) {}

  String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
