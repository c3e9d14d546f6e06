package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Pronunciation;

/**
 * How a word of the bank is said too, or is said in another accent.
 *
 * @param saying the pronunciation
 * @param instead whether it takes the place of those that the bank has in the accent
 */
public record NewPronunciation(String spelling, ProposedPronunciation saying, boolean instead)
    implements Proposal {
  public NewPronunciation {
    spelling = Given.text(spelling);
    saying = ProposedPronunciation.given(saying);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.PRONUNCIATION;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<ProposedPronunciation> pronunciations() {
    return List.of(saying);
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>(snapshot.missing(spelling));
    errors.addAll(saying.errors("saying", spelling, snapshot.lexicon()));
    if (errors.isEmpty() && isThere(snapshot)) {
      errors.add(
          new FieldError(
              "saying",
              "The bank has this pronunciation already. To split it differently, suggest a correction."));
    }
    return errors;
  }

  private boolean isThere(BankSnapshot snapshot) {
    Pronunciation wanted = saying.pronunciation(spelling, snapshot.lexicon(), "");
    return !instead
        && snapshot.word(spelling).orElseThrow().pronunciations().stream()
            .anyMatch(each -> isSame(each, wanted));
  }

  private static boolean isSame(Pronunciation one, Pronunciation other) {
    return one.accent().equals(other.accent()) && one.sounds().equals(other.sounds());
  }

  /** The new one stands after the others of its accent: the first is the usual one. */
  @Override
  public Change change(BankSnapshot snapshot, String source) {
    Word word = snapshot.word(spelling).orElseThrow();
    List<Pronunciation> all = new ArrayList<>();
    for (Pronunciation each : word.pronunciations()) {
      if (!(instead && each.accent().equals(saying.accent()))) {
        all.add(each);
      }
    }
    all.add(saying.pronunciation(spelling, snapshot.lexicon(), source));
    return Change.of(word.saying(all).approved());
  }

  @Override
  public String summary() {
    return "%s said /%s/ in %s.".formatted(spelling, saying.sounds(), saying.accent());
  }
}
