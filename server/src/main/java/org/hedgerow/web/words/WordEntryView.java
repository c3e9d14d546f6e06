package org.hedgerow.web.words;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.Check;
import org.hedgerow.web.view.CheckView;
import org.hedgerow.web.view.WordEntry;

/** Everything known of a word, and whether a child who knows no phonogram can read it. */
record WordEntryView(int edition, WordEntry word, CheckView check) {

  static WordEntryView of(
      Lexicon lexicon,
      Word word,
      List<String> accents,
      List<PublishedEdition> history,
      Check check) {
    return new WordEntryView(
        lexicon.edition(),
        WordEntry.of(word, lexicon.pictures(), accents, history),
        CheckView.of(check));
  }
}
