package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.phonics.Span;
import org.hedgerow.phonics.UnknownSoundException;
import org.hedgerow.review.LetterGroup;

/** What the machine makes of letters and sounds. */
record ComputedAlignments(Lexicon lexicon) {

  /** Empty if the accent or a sound is unknown, or nothing is given. */
  Optional<List<Sound>> sounds(String accent, String text) {
    Optional<AccentCatalogue> known = lexicon.accent(accent);
    if (known.isEmpty() || text.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new SoundReader(known.get().accent()).read(text));
    } catch (UnknownSoundException unknown) {
      return Optional.empty();
    }
  }

  /** The pieces that the machine proposes; none where it can’t. */
  List<LetterGroup> proposed(String spelling, String accent, List<Sound> sounds) {
    return spelling.matches("[a-z]{1,40}")
        ? lexicon
            .aligner(accent)
            .align(spelling, sounds)
            .map(ComputedAlignments::pieces)
            .orElse(List.of())
        : List.of();
  }

  /** The pieces that the bank has for a word said so, else those that the machine proposes. */
  List<LetterGroup> present(String spelling, String accent, List<Sound> sounds) {
    return lexicon.word(spelling).stream()
        .flatMap(word -> word.pronunciations().stream())
        .filter(said -> said.accent().equals(accent) && said.sounds().equals(sounds))
        .flatMap(said -> said.alignment().stream())
        .findFirst()
        .map(ComputedAlignments::pieces)
        .orElseGet(() -> proposed(spelling, accent, sounds));
  }

  static List<LetterGroup> pieces(Alignment alignment) {
    return alignment.spans().stream().map(ComputedAlignments::piece).toList();
  }

  private static LetterGroup piece(Span span) {
    return new LetterGroup(span.letters(), Sound.spaced(span.sounds()));
  }
}
