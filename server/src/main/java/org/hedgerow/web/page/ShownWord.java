package org.hedgerow.web.page;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.reading.CheckedWord;
import org.hedgerow.reading.Standard;

/**
 * A word as it is shown in a list: by the pronunciation of an accent that comes first.
 *
 * @param alignment empty if the word has no pronunciation in the accent, or none that is explained
 */
public record ShownWord(String spelling, Optional<Alignment> alignment) {

  public static ShownWord of(Word word, String accent) {
    return of(word.spelling(), word.saidIn(accent));
  }

  public static ShownWord of(CheckedWord subject, String accent) {
    return of(subject.spelling(), subject.saidIn(accent));
  }

  private static ShownWord of(String spelling, List<Pronunciation> said) {
    return new ShownWord(spelling, said.stream().findFirst().flatMap(Pronunciation::alignment));
  }

  /** The word with the letters of its target apart. */
  public List<LetterRun> pieces(Standard standard) {
    return LetterRun.of(spelling, targetLetters(standard));
  }

  /** The positions of the letters that are printed in red. */
  public List<Integer> targetLetters(Standard standard) {
    return alignment.stream()
        .flatMap(found -> found.spans().stream())
        .filter(span -> standard.isTarget(span.correspondence()))
        .flatMap(span -> span.letters().stream())
        .toList();
  }
}
