package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Pronunciation;

/**
 * Which letters of a word spell which of its sounds, where the machine was wrong.
 *
 * @param saying a pronunciation that the bank has, with its spans
 */
public record Realignment(String spelling, Saying saying) implements Proposal {
  public Realignment {
    spelling = Given.text(spelling);
    saying = Saying.given(saying);
  }

  @Override
  public Kind kind() {
    return Kind.ALIGNMENT;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldFault> faults(Basis basis) {
    List<FieldFault> faults = new ArrayList<>(basis.missing(spelling));
    faults.addAll(saying.faults("saying", spelling, basis.lexicon()));
    if (saying.spans().isEmpty()) {
      faults.add(new FieldFault("saying.spans", "Say which letters belong to which sound."));
    }
    if (faults.isEmpty() && present(basis).isEmpty()) {
      faults.add(
          new FieldFault(
              "saying.sounds",
              "The bank doesn’t have “%s” said so in %s. Propose the pronunciation."
                  .formatted(spelling, saying.accent())));
    }
    return faults;
  }

  /** The pronunciation as it is aligned now. */
  private Optional<Pronunciation> present(Basis basis) {
    Pronunciation wanted = saying.pronunciation(spelling, basis.lexicon(), "");
    return basis.word(spelling).stream()
        .flatMap(word -> word.pronunciations().stream())
        .filter(
            each -> each.accent().equals(wanted.accent()) && each.sounds().equals(wanted.sounds()))
        .findFirst();
  }

  @Override
  public Change change(Basis basis, String source) {
    Word word = basis.word(spelling).orElseThrow();
    Pronunciation before = present(basis).orElseThrow();
    Pronunciation after =
        before.aligned(
            saying.pronunciation(spelling, basis.lexicon(), source).alignment().orElseThrow());
    List<Pronunciation> all =
        word.pronunciations().stream().map(each -> each.equals(before) ? after : each).toList();
    return Change.of(word.saying(all).approved());
  }

  @Override
  public String summary() {
    return "Letters and sounds of %s in %s.".formatted(spelling, saying.accent());
  }
}
