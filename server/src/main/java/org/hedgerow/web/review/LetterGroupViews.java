package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Grapheme;
import org.hedgerow.phonics.Realisation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.review.LetterGroup;
import org.hedgerow.web.page.SoundWords;

/** Shows the pieces of a word. */
record LetterGroupViews(Lexicon lexicon, AccentCatalogue accent, String spelling) {

  List<LetterGroupView> of(List<LetterGroup> pieces) {
    return pieces.stream().map(this::of).toList();
  }

  private LetterGroupView of(LetterGroup piece) {
    List<Sound> sounds =
        new ComputedAlignments(lexicon)
            .sounds(accent.accent().tag(), piece.sound())
            .orElse(List.of());
    Optional<Realisation> known =
        grapheme(piece).flatMap(grapheme -> accent.find(grapheme, sounds));
    Optional<Correspondence> correspondence = known.map(Realisation::correspondence);
    return new LetterGroupView(
        letters(piece),
        SoundWords.of(accent.accent().tag(), sounds),
        Sound.joined(sounds),
        correspondence.map(Correspondence::keyWord).orElse(""),
        correspondence.filter(Correspondence::isTaught).isPresent(),
        known.isPresent());
  }

  private String letters(LetterGroup piece) {
    StringBuilder letters = new StringBuilder();
    int last = -1;
    for (int letter : piece.letters()) {
      if (last >= 0 && letter != last + 1) {
        letters.append('-');
      }
      if (letter >= 0 && letter < spelling.length()) {
        letters.append(spelling.charAt(letter));
      }
      last = letter;
    }
    return letters.toString();
  }

  private Optional<Grapheme> grapheme(LetterGroup piece) {
    String letters = letters(piece);
    return letters.matches("[a-z]+|[aeiouy]-e")
        ? Optional.of(new Grapheme(letters))
        : Optional.empty();
  }
}
