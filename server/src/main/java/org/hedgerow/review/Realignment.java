package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Word;
import org.hedgerow.operations.FieldError;
import org.hedgerow.phonics.Pronunciation;

/**
 * Which letters of a word spell which of its sounds, where the machine was wrong.
 *
 * @param saying a pronunciation that the bank has, with its spans
 */
public record Realignment(String spelling, ProposedPronunciation saying) implements Proposal {
  public Realignment {
    spelling = Given.text(spelling);
    saying = ProposedPronunciation.given(saying);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.ALIGNMENT;
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
    if (saying.spans().isEmpty()) {
      errors.add(new FieldError("saying.spans", "Say which letters belong to which sound."));
    }
    if (errors.isEmpty() && present(snapshot).isEmpty()) {
      errors.add(
          new FieldError(
              "saying.sounds",
              "The bank doesn’t have “%s” said so in %s. Propose the pronunciation."
                  .formatted(spelling, saying.accent())));
    }
    return errors;
  }

  /** The pronunciation as it is aligned now. */
  private Optional<Pronunciation> present(BankSnapshot snapshot) {
    Pronunciation wanted = saying.pronunciation(spelling, snapshot.lexicon(), "");
    return snapshot.word(spelling).stream()
        .flatMap(word -> word.pronunciations().stream())
        .filter(
            each -> each.accent().equals(wanted.accent()) && each.sounds().equals(wanted.sounds()))
        .findFirst();
  }

  @Override
  public Change change(BankSnapshot snapshot, String source) {
    Word word = snapshot.word(spelling).orElseThrow();
    Pronunciation before = present(snapshot).orElseThrow();
    Pronunciation after =
        before.aligned(
            saying.pronunciation(spelling, snapshot.lexicon(), source).alignment().orElseThrow());
    List<Pronunciation> all =
        word.pronunciations().stream().map(each -> each.equals(before) ? after : each).toList();
    return Change.of(word.saying(all).approved());
  }

  @Override
  public String summary() {
    return "Letters and sounds of %s in %s.".formatted(spelling, saying.accent());
  }
}
