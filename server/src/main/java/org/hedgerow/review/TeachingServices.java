package org.hedgerow.review;

/** What administrators do about reading rules and sequences, put together. */
public record TeachingServices(
    SaveRules saveRules,
    WithdrawRules withdrawRules,
    SaveSequence saveSequence,
    WithdrawSequence withdrawSequence) {
  static TeachingServices of(Workroom room) {
    return new TeachingServices(
        new SaveRules(room),
        new WithdrawRules(room),
        new SaveSequence(room),
        new WithdrawSequence(room));
  }
}
