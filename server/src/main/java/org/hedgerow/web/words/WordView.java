package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.hedgerow.lexicon.Pictures;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.view.PictureView;
import org.hedgerow.web.view.PronunciationView;

/**
 * A word as it stands in lists.
 *
 * @param picturable left out if nobody has said
 * @param picture left out if it has none
 */
record WordView(
    String spelling,
    String status,
    int commonness,
    int syllables,
    OptionalInt picturable,
    boolean starter,
    List<String> partsOfSpeech,
    List<String> meanings,
    Optional<PictureView> picture,
    List<PronunciationView> pronunciations) {

  /**
   * @param pictures of the edition
   * @param accents tags of those whose pronunciations are shown
   * @param target tells what was asked for
   */
  static WordView of(
      Word word, Pictures pictures, List<String> accents, Predicate<Correspondence> target) {
    return new WordView(
        word.spelling(),
        word.status().label(),
        word.commonness(),
        word.syllables(),
        word.picturable(),
        word.isStarter(),
        word.partsOfSpeech(),
        word.meanings(),
        pictures.of(word).map(PictureView::of),
        accents.stream()
            .flatMap(accent -> word.saidIn(accent).stream())
            .map(pronunciation -> PronunciationView.of(pronunciation, target))
            .toList());
  }
}
