package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.reading.CheckedWord;
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
public record SpokenWord(String ipa, List<SpanLine> lines, String obstacle, String asIn) {

  /**
   * All ways in which an accent says a word; where it only follows another, that is said openly.
   *
   * @param concerned the letters that a reason speaks of
   */
  public static List<SpokenWord> all(
      CheckedWord subject,
      Lexicon lexicon,
      String accent,
      Standard standard,
      List<Integer> concerned) {
    return subject.saidIn(accent).stream()
        .map(each -> of(each, follows(lexicon, each, accent), standard, concerned))
        .toList();
  }

  private static String follows(Lexicon lexicon, Pronunciation pronunciation, String accent) {
    return pronunciation.accent().equals(accent)
        ? ""
        : lexicon.accent(pronunciation.accent()).orElseThrow().accent().name();
  }

  private static SpokenWord of(
      Pronunciation pronunciation, String asIn, Standard standard, List<Integer> concerned) {
    List<SpanLine> lines =
        pronunciation.alignment().stream()
            .flatMap(alignment -> alignment.spans().stream())
            .map(span -> SpanLine.of(span, standard, concerned))
            .toList();
    return new SpokenWord(
        Sound.spaced(pronunciation.sounds()), lines, pronunciation.obstacle(), asIn);
  }
}
