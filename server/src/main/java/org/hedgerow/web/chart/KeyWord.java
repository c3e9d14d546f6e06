package org.hedgerow.web.chart;

import java.util.List;
import java.util.stream.IntStream;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.page.LetterRun;

/**
 * The word that shows a value, with the letters of the value apart. They are where its spelling
 * first has them, as key words are chosen so: no word need be looked up for a chart.
 */
final class KeyWord {

  private KeyWord() {}

  static List<LetterRun> pieces(Correspondence value) {
    return LetterRun.of(value.keyWord(), letters(value));
  }

  private static List<Integer> letters(Correspondence value) {
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
