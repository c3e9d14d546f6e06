package org.hedgerow.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Word;

/**
 * A word that the bank doesn't hold yet.
 *
 * @param pronunciations in one accent or several, each once or more
 * @param labels what else is known of it
 */
public record NewWord(String spelling, List<Saying> pronunciations, Labels labels)
    implements Proposal {
  /** For a word of which nobody says how common it is: neither everyday nor rare. */
  static final int USUAL_COMMONNESS = 3;

  static final int MOST_PRONUNCIATIONS = 20;

  public NewWord {
    spelling = Given.text(spelling);
    pronunciations = Given.list(pronunciations);
    labels = Labels.given(labels);
  }

  @Override
  public Kind kind() {
    return Kind.WORD;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldFault> faults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>(Spelling.faults(spelling));
    if (basis.word(spelling).isPresent()) {
      faults.add(
          new FieldFault(
              "spelling",
              "The bank holds “%s” already. Propose a pronunciation, tags or a picture for it."
                  .formatted(spelling)));
    }
    if (pronunciations.isEmpty()) {
      faults.add(
          new FieldFault("pronunciations", "Say how it is pronounced, in one accent at least."));
    }
    if (pronunciations.size() > MOST_PRONUNCIATIONS) {
      faults.add(
          new FieldFault(
              "pronunciations", "At most %d pronunciations.".formatted(MOST_PRONUNCIATIONS)));
    }
    faults.addAll(pronunciationFaults(basis));
    faults.addAll(labels.faults());
    return faults;
  }

  private List<FieldFault> pronunciationFaults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < Math.min(pronunciations.size(), MOST_PRONUNCIATIONS); i++) {
      String field = "pronunciations[%d]".formatted(i);
      Saying saying = pronunciations.get(i);
      List<FieldFault> its = saying.faults(field, spelling, basis.lexicon());
      faults.addAll(its);
      if (its.isEmpty() && !seen.add(saying.read(basis.lexicon()))) {
        faults.add(new FieldFault(field, "The same pronunciation stands here twice."));
      }
    }
    return faults;
  }

  @Override
  public Change change(Basis basis, String source) {
    Word word =
        new Word(
            spelling,
            Status.APPROVED,
            labels.commonness().orElse(USUAL_COMMONNESS),
            basis.lexicon().edition(),
            List.of(),
            pronunciations.stream()
                .map(saying -> saying.pronunciation(spelling, basis.lexicon(), source))
                .toList());
    return Change.of(labels.on(word, source));
  }

  @Override
  public String summary() {
    return "New word: %s.".formatted(spelling);
  }
}
