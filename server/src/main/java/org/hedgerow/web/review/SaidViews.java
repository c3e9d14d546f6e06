package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.Piece;
import org.hedgerow.review.Saying;

/** Shows how a word is said. */
record SaidViews(Lexicon lexicon, String spelling) {

  SaidView of(Saying saying) {
    Optional<AccentCatalogue> accent = lexicon.accent(saying.accent());
    List<Sound> sounds =
        new ComputedAlignments(lexicon).sounds(saying.accent(), saying.sounds()).orElse(List.of());
    if (accent.isEmpty() || sounds.isEmpty()) {
      return new SaidView(saying.accent(), saying.sounds(), List.of(), "no sounds are given");
    }
    List<Piece> pieces =
        saying.spans().isEmpty()
            ? new ComputedAlignments(lexicon).proposed(spelling, saying.accent(), sounds)
            : saying.spans();
    return view(accent.get(), sounds, pieces);
  }

  SaidView of(Pronunciation said) {
    AccentCatalogue accent = lexicon.accent(said.accent()).orElseThrow();
    List<Piece> pieces = said.alignment().map(ComputedAlignments::pieces).orElse(List.of());
    return view(accent, said.sounds(), pieces);
  }

  private SaidView view(AccentCatalogue accent, List<Sound> sounds, List<Piece> pieces) {
    return new SaidView(
        accent.accent().name(),
        Sound.spaced(sounds),
        new PieceViews(lexicon, accent, spelling).of(pieces),
        pieces.isEmpty() ? obstacle(accent, sounds) : "");
  }

  private String obstacle(AccentCatalogue accent, List<Sound> sounds) {
    return spelling.matches("[a-z]{1,40}")
        ? lexicon.aligner(accent.accent().tag()).obstacle(spelling, sounds)
        : "the word is missing";
  }
}
