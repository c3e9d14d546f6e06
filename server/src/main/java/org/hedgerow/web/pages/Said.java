package org.hedgerow.web.pages;

import java.util.List;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.Standard;

/**
 * One way of saying a word, span by span.
 *
 * @param ipa the sounds in the phonetic alphabet, with spaces
 * @param lines empty if the spelling can't be explained
 * @param obstacle why it can't, else an empty text
 * @param asIn the name of the accent that says it so, where the one asked for only follows it; else
 *     an empty text
 */
record Said(String ipa, List<SpanLine> lines, String obstacle, String asIn) {

  static Said of(Pronunciation pronunciation, Standard standard, List<Integer> concerned) {
    List<SpanLine> lines =
        pronunciation.alignment().stream()
            .flatMap(alignment -> alignment.spans().stream())
            .map(span -> SpanLine.of(span, standard, concerned))
            .toList();
    return new Said(Sound.spaced(pronunciation.sounds()), lines, pronunciation.obstacle(), "");
  }

  /** The same, taken over from another accent. */
  Said asIn(String accentName) {
    return new Said(ipa, lines, obstacle, accentName);
  }
}
