package org.hedgerow.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.FieldError;

/**
 * A word that the bank doesn't hold yet.
 *
 * @param pronunciations in one accent or several, each once or more
 * @param labels what else is known of it
 */
public record NewWord(
    String spelling, List<ProposedPronunciation> pronunciations, WordLabels labels)
    implements Proposal {
  /** For a word of which nobody says how common it is: neither everyday nor rare. */
  static final int DEFAULT_COMMONNESS = 3;

  static final int MAX_PRONUNCIATIONS = 20;

  public NewWord {
    spelling = Given.text(spelling);
    pronunciations = Given.list(pronunciations);
    labels = WordLabels.given(labels);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.WORD;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>(Spelling.errors(spelling));
    if (snapshot.word(spelling).isPresent()) {
      errors.add(
          new FieldError(
              "spelling",
              "The bank holds “%s” already. Propose a pronunciation, tags or a picture for it."
                  .formatted(spelling)));
    }
    if (pronunciations.isEmpty()) {
      errors.add(
          new FieldError("pronunciations", "Say how it is pronounced, in one accent at least."));
    }
    if (pronunciations.size() > MAX_PRONUNCIATIONS) {
      errors.add(
          new FieldError(
              "pronunciations", "At most %d pronunciations.".formatted(MAX_PRONUNCIATIONS)));
    }
    errors.addAll(pronunciationErrors(snapshot));
    errors.addAll(labels.errors());
    return errors;
  }

  private List<FieldError> pronunciationErrors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < Math.min(pronunciations.size(), MAX_PRONUNCIATIONS); i++) {
      String field = "pronunciations[%d]".formatted(i);
      ProposedPronunciation saying = pronunciations.get(i);
      List<FieldError> its = saying.errors(field, spelling, snapshot.lexicon());
      errors.addAll(its);
      if (its.isEmpty() && !seen.add(saying.read(snapshot.lexicon()))) {
        errors.add(new FieldError(field, "The same pronunciation stands here twice."));
      }
    }
    return errors;
  }

  @Override
  public Change change(BankSnapshot snapshot, String source) {
    Word word =
        new Word(
            spelling,
            Status.APPROVED,
            labels.commonness().orElse(DEFAULT_COMMONNESS),
            snapshot.lexicon().edition(),
            List.of(),
            pronunciations.stream()
                .map(saying -> saying.pronunciation(spelling, snapshot.lexicon(), source))
                .toList());
    return Change.of(labels.on(word, source));
  }

  @Override
  public String summary() {
    return "New word: %s.".formatted(spelling);
  }
}
