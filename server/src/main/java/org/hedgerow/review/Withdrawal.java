package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.FieldError;

/**
 * Something that should go from the bank.
 *
 * @param spelling the word, or an empty text
 * @param sentence the sentence, or an empty text
 * @param reason why
 */
public record Withdrawal(String spelling, String sentence, String reason) implements Proposal {
  public Withdrawal {
    spelling = Given.text(spelling);
    sentence = Given.text(sentence);
    reason = Given.text(reason);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.WITHDRAWAL;
  }

  @Override
  public String subject() {
    return concernsSentence() ? sentence : spelling;
  }

  @Override
  public String subjectField() {
    return concernsSentence() ? "sentence" : "spelling";
  }

  @Override
  public boolean concernsSentence() {
    return !sentence.isEmpty();
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>();
    if (!concernsSentence()) {
      errors.addAll(snapshot.missing(spelling));
    } else if (snapshot.sentences().apply(sentence).isEmpty()) {
      errors.add(new FieldError("sentence", "The bank doesn’t hold this sentence."));
    }
    if (reason.isEmpty()) {
      errors.add(new FieldError("reason", "Say why it should go."));
    }
    return errors;
  }

  @Override
  public Change change(BankSnapshot snapshot, String source) {
    return concernsSentence() ? Change.withoutSentence(sentence) : Change.withoutWord(spelling);
  }

  @Override
  public String summary() {
    return concernsSentence() ? "A sentence withdrawn." : "Withdrawn: %s.".formatted(spelling);
  }
}
