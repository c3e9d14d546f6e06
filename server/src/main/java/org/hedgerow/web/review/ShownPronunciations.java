package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.LetterGroup;
import org.hedgerow.review.ProposedPronunciation;

/** Shows how a word is said. */
record ShownPronunciations(Lexicon lexicon, String spelling) {

  ShownPronunciation of(ProposedPronunciation saying) {
    Optional<AccentCatalogue> accent = lexicon.accent(saying.accent());
    List<Sound> sounds =
        new ComputedAlignments(lexicon).sounds(saying.accent(), saying.sounds()).orElse(List.of());
    if (accent.isEmpty() || sounds.isEmpty()) {
      return new ShownPronunciation(
          saying.accent(), saying.sounds(), List.of(), "no sounds are given");
    }
    List<LetterGroup> pieces =
        saying.spans().isEmpty()
            ? new ComputedAlignments(lexicon).proposed(spelling, saying.accent(), sounds)
            : saying.spans();
    return view(accent.get(), sounds, pieces);
  }

  ShownPronunciation of(Pronunciation said) {
    AccentCatalogue accent = lexicon.accent(said.accent()).orElseThrow();
    List<LetterGroup> pieces = said.alignment().map(ComputedAlignments::pieces).orElse(List.of());
    return view(accent, said.sounds(), pieces);
  }

  private ShownPronunciation view(
      AccentCatalogue accent, List<Sound> sounds, List<LetterGroup> pieces) {
    return new ShownPronunciation(
        accent.accent().name(),
        Sound.spaced(sounds),
        new LetterGroupViews(lexicon, accent, spelling).of(pieces),
        pieces.isEmpty() ? obstacle(accent, sounds) : "");
  }

  private String obstacle(AccentCatalogue accent, List<Sound> sounds) {
    return spelling.matches("[a-z]{1,40}")
        ? lexicon.aligner(accent.accent().tag()).obstacle(spelling, sounds)
        : "the word is missing";
  }
}
