package org.hedgerow.review;

/** What administrators do about reading rules, sequences and sight words, put together. */
public record TeachingServices(
    SaveRules saveRules,
    WithdrawRules withdrawRules,
    SaveSequence saveSequence,
    WithdrawSequence withdrawSequence,
    SaveSightWords saveSightWords,
    WithdrawSightWords withdrawSightWords) {
  static TeachingServices of(ReviewContext context) {
    return new TeachingServices(
        new SaveRules(context),
        new WithdrawRules(context),
        new SaveSequence(context),
        new WithdrawSequence(context),
        new SaveSightWords(context),
        new WithdrawSightWords(context));
  }
}
