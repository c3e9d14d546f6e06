package org.hedgerow.review.curriculum;

import org.hedgerow.review.ReviewContext;

/** What administrators do about reading rules, sequences and sight words, put together. */
public record CurriculumServices(
    SaveRules saveRules,
    WithdrawRules withdrawRules,
    SaveSequence saveSequence,
    WithdrawSequence withdrawSequence,
    SaveSightWords saveSightWords,
    WithdrawSightWords withdrawSightWords) {
  public static CurriculumServices of(ReviewContext context) {
    return new CurriculumServices(
        new SaveRules(context),
        new WithdrawRules(context),
        new SaveSequence(context),
        new WithdrawSequence(context),
        new SaveSightWords(context),
        new WithdrawSightWords(context));
  }
}
