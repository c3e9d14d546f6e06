package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.accounts.FieldFault;

/**
 * What else should be known of a word of the bank.
 *
 * @param labels those that are to change
 */
public record Retag(String spelling, Labels labels) implements Proposal {
  public Retag {
    spelling = Given.text(spelling);
    labels = Labels.given(labels);
  }

  @Override
  public Kind kind() {
    return Kind.TAGS;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldFault> faults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>(basis.missing(spelling));
    if (labels.isEmpty()) {
      faults.add(new FieldFault("labels", "Say what is to change."));
    }
    faults.addAll(labels.faults());
    return faults;
  }

  @Override
  public Change change(Basis basis, String source) {
    return Change.of(labels.on(basis.word(spelling).orElseThrow(), source).approved());
  }

  @Override
  public String summary() {
    return "What is known of %s.".formatted(spelling);
  }
}
