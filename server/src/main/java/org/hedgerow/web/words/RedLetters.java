package org.hedgerow.web.words;

import java.util.Collection;
import org.dhatim.fastexcel.RichText;
import org.hedgerow.web.page.LetterRun;

/** Words for a cell of a spreadsheet, with the letters of the phonogram in red. */
final class RedLetters {
  /** As on the pages. */
  private static final String RED = "C8101C";

  private RedLetters() {}

  /**
   * @param red positions from 0
   */
  static RichText of(String spelling, Collection<Integer> red) {
    RichText.Builder text = RichText.builder();
    for (LetterRun run : LetterRun.of(spelling, red)) {
      RichText.RunBuilder letters = text.run(run.letters());
      (run.phonogram() ? letters.fontColor(RED) : letters).end();
    }
    return text.build();
  }
}
