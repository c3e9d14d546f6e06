package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Pronunciation;

/**
 * A word as the checks see it.
 *
 * @param pronunciations in every accent that the check may ask for
 * @param accents how the accents of the pronunciations are called, and fall back on each other
 * @param inflection set if the word is a regular form of another
 * @param name why the word is only a name, else an empty text
 * @param unfit why the word is not for small children, else an empty text
 * @param known whether the bank holds the word; if not, its pronunciation is a guess
 */
public record CheckedWord(
    String spelling,
    List<Pronunciation> pronunciations,
    Accents accents,
    Optional<Inflection> inflection,
    String name,
    String unfit,
    boolean known) {

  public CheckedWord {
    requireNonNull(spelling);
    pronunciations = List.copyOf(pronunciations);
    requireNonNull(accents);
    requireNonNull(inflection);
    requireNonNull(name);
    requireNonNull(unfit);
  }

  /** The same where it does not matter that it is a name. */
  public CheckedWord unnamed() {
    return new CheckedWord(spelling, pronunciations, accents, inflection, "", unfit, known);
  }

  /** Whether a final s is an ending: <em>dogs</em>, but not <em>is</em>. */
  public boolean endsInAddedS() {
    return inflection.isPresent() && spelling.endsWith("s");
  }

  /** The pronunciations that count in an accent: its own, else those of its parent. */
  public List<Pronunciation> saidIn(String accent) {
    return saidIn(accents.chain(accent), pronunciations);
  }

  /**
   * The pronunciations that count in the first of some accents that has any.
   *
   * @param chain the tags of an accent, of its parent and so on
   */
  public static List<Pronunciation> saidIn(List<String> chain, List<Pronunciation> pronunciations) {
    for (String accent : chain) {
      List<Pronunciation> said = counting(pronunciations, accent);
      if (!said.isEmpty()) {
        return said;
      }
    }
    return List.of();
  }

  /** The pronunciations in an accent, those set aside only where there is no other. */
  private static List<Pronunciation> counting(List<Pronunciation> pronunciations, String accent) {
    List<Pronunciation> said = new ArrayList<>(pronunciations.size());
    List<Pronunciation> counting = new ArrayList<>(pronunciations.size());
    for (Pronunciation pronunciation : pronunciations) {
      if (pronunciation.accent().equals(accent)) {
        said.add(pronunciation);
        if (!pronunciation.aside()) {
          counting.add(pronunciation);
        }
      }
    }
    return counting.isEmpty() ? said : counting;
  }
}
