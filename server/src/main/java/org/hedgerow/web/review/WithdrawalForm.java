package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Withdrawal;

/** The form in which somebody asks that a word or a sentence should go. */
final class WithdrawalForm extends KindForm<Withdrawal> {
  WithdrawalForm() {
    super(
        Withdrawal.class,
        "Something to take out",
        "A word that shouldn’t be in the bank at all, and why.");
  }

  @Override
  Withdrawal read(Fields fields, Lexicon lexicon) {
    return new Withdrawal(spelling(fields), fields.text("sentence"), fields.text("reason"));
  }

  @Override
  ProposalFields show(Withdrawal withdrawal, Lexicon lexicon, FieldErrors errors) {
    ProposalFields about =
        withdrawal.concernsSentence()
            ? ProposalFields.ofSentence()
            : ProposalFields.ofWord(withdrawal.spelling(), lexicon);
    return about.with(new WithdrawalFields(withdrawal.sentence(), withdrawal.reason()));
  }

  @Override
  List<Fact> describe(Withdrawal withdrawal, Lexicon lexicon) {
    return List.of(new Fact("Why it should go", withdrawal.reason()));
  }
}
