package org.hedgerow.web.api;

import java.util.List;
import java.util.function.Predicate;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Correspondence;

/** A word as it stands in lists. */
record WordView(
    String spelling,
    String status,
    int commonness,
    int syllables,
    List<PronunciationView> pronunciations) {

  /**
   * @param accents tags of those whose pronunciations are shown
   * @param target tells what was asked for
   */
  static WordView of(Word word, List<String> accents, Predicate<Correspondence> target) {
    return new WordView(
        word.spelling(),
        word.status().label(),
        word.commonness(),
        word.syllables(),
        accents.stream()
            .flatMap(accent -> word.saidIn(accent).stream())
            .map(pronunciation -> PronunciationView.of(pronunciation, target))
            .toList());
  }
}
