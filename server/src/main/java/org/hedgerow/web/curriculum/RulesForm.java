package org.hedgerow.web.curriculum;

import java.util.List;
import org.hedgerow.review.curriculum.RulesDraft;

/** A set of reading rules to be written, and all the rules there are. */
record RulesForm(SetForm<RulesDraft> set, List<Choice> choices) {
  /**
   * @param name of the rule
   * @param meaning what a teacher allows by it
   */
  record Choice(String name, String meaning, boolean on) {}
}
