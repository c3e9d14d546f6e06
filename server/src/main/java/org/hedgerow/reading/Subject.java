package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.phonics.Pronunciation;

/**
 * A word as the checks see it.
 *
 * @param pronunciations in every accent that the check may ask for
 * @param inflection set if the word is a regular form of another
 * @param name why the word is only a name, else an empty text
 * @param unfit why the word is not for small children, else an empty text
 * @param known whether the bank holds the word; if not, its pronunciation is a guess
 */
public record Subject(
    String spelling,
    List<Pronunciation> pronunciations,
    Optional<Inflection> inflection,
    String name,
    String unfit,
    boolean known) {

  public Subject {
    requireNonNull(spelling);
    pronunciations = List.copyOf(pronunciations);
    requireNonNull(inflection);
    requireNonNull(name);
    requireNonNull(unfit);
  }

  /** Whether a final s is an ending: <em>dogs</em>, but not <em>is</em>. */
  public boolean endsInAddedS() {
    return inflection.isPresent() && spelling.endsWith("s");
  }

  /** The pronunciations in an accent that count. */
  public List<Pronunciation> saidIn(String accent) {
    return counting(pronunciations, accent);
  }

  /** The pronunciations in an accent, those set aside only where there is no other. */
  public static List<Pronunciation> counting(List<Pronunciation> pronunciations, String accent) {
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
