package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.accounts.FieldFault;

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
  public Kind kind() {
    return Kind.WITHDRAWAL;
  }

  @Override
  public String subject() {
    return isOfSentence() ? sentence : spelling;
  }

  @Override
  public String subjectField() {
    return isOfSentence() ? "sentence" : "spelling";
  }

  private boolean isOfSentence() {
    return !sentence.isEmpty();
  }

  @Override
  public List<FieldFault> faults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>();
    if (!isOfSentence()) {
      faults.addAll(basis.missing(spelling));
    } else if (basis.sentences().apply(sentence).isEmpty()) {
      faults.add(new FieldFault("sentence", "The bank doesn’t hold this sentence."));
    }
    if (reason.isEmpty()) {
      faults.add(new FieldFault("reason", "Say why it should go."));
    }
    return faults;
  }

  @Override
  public Change change(Basis basis, String source) {
    return isOfSentence() ? Change.withoutSentence(sentence) : Change.withoutWord(spelling);
  }

  @Override
  public String summary() {
    return isOfSentence() ? "A sentence withdrawn." : "Withdrawn: %s.".formatted(spelling);
  }
}
