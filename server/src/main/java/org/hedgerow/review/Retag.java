package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.FieldError;

/**
 * What else should be known of a word of the bank.
 *
 * @param labels those that are to change
 */
public record Retag(String spelling, WordLabels labels) implements Proposal {
  public Retag {
    spelling = Given.text(spelling);
    labels = WordLabels.given(labels);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.TAGS;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>(snapshot.missing(spelling));
    if (labels.isEmpty()) {
      errors.add(new FieldError("labels", "Say what is to change."));
    }
    errors.addAll(labels.errors());
    return errors;
  }

  @Override
  public Change change(BankSnapshot snapshot, String source) {
    return Change.of(labels.on(snapshot.word(spelling).orElseThrow(), source).approved());
  }

  @Override
  public String summary() {
    return "What is known of %s.".formatted(spelling);
  }
}
