package org.hedgerow.review;

/** What administrators do about reading rules, sequences and sight words, put together. */
public record TeachingServices(
    SaveRules saveRules,
    WithdrawRules withdrawRules,
    SaveSequence saveSequence,
    WithdrawSequence withdrawSequence,
    SaveSightWords saveSightWords,
    WithdrawSightWords withdrawSightWords) {
  static TeachingServices of(ReviewContext room) {
    return new TeachingServices(
        new SaveRules(room),
        new WithdrawRules(room),
        new SaveSequence(room),
        new WithdrawSequence(room),
        new SaveSightWords(room),
        new WithdrawSightWords(room));
  }
}
