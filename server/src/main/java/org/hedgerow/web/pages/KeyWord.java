package org.hedgerow.web.pages;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;

/** The word that shows a value, with the letters of the value apart. */
final class KeyWord {

  private KeyWord() {}

  static List<Piece> pieces(Correspondence value, Lexicon lexicon, Accent accent) {
    List<Integer> letters =
        lexicon.word(value.keyWord()).stream()
            .flatMap(word -> word.pronunciationsIn(accent.tag()).stream())
            .map(Pronunciation::alignment)
            .flatMap(Optional::stream)
            .map(alignment -> letters(value, alignment))
            .filter(found -> !found.isEmpty())
            .findFirst()
            .orElseGet(() -> lettersAsWritten(value));
    return Piece.of(value.keyWord(), letters);
  }

  private static List<Integer> letters(Correspondence value, Alignment alignment) {
    return alignment.spans().stream()
        .filter(span -> span.correspondence().equals(value))
        .findFirst()
        .map(Span::letters)
        .orElse(List.of());
  }

  /** For key words that the bank doesn't hold, or explains in another way. */
  private static List<Integer> lettersAsWritten(Correspondence value) {
    String head = value.grapheme().head();
    int start = value.keyWord().indexOf(head);
    if (start < 0) {
      return List.of();
    }
    if (value.grapheme().isSplit()) {
      return List.of(start, value.keyWord().indexOf('e', start + 2));
    }
    return IntStream.range(start, start + head.length()).boxed().toList();
  }
}
