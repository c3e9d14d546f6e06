package org.hedgerow.lexicon;

import java.util.List;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Span;

/** Which phonograms a word holds, for those who teach it whole or by its sounds. */
public final class HeldPhonograms {
  private HeldPhonograms() {}

  /**
   * The values that a child must have been taught to read the word as it is usually said, in the
   * order of its letters; none where it isn't known, or can't be explained.
   *
   * @param accent its tag
   */
  public static List<Correspondence> in(Lexicon lexicon, String spelling, String accent) {
    return lexicon.word(spelling).stream()
        .flatMap(word -> word.saidIn(accent).stream().limit(1))
        .flatMap(said -> said.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .filter(DerivedSequence::mustBeTaught)
        .map(Span::correspondence)
        .distinct()
        .toList();
  }
}
