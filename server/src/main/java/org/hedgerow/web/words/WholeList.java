package org.hedgerow.web.words;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;

/** All words of a list, wherever in it the question stands and however few it asks for. */
final class WholeList {

  private WholeList() {}

  static List<Word> of(Lexicon lexicon, WordRequest request) {
    WordRequest unlimited =
        new WordRequest(
            request.edition(),
            request.phonogram(),
            request.sound(),
            request.query(),
            Integer.MAX_VALUE,
            0,
            request.resolved());
    return WordList.find(lexicon, unlimited).words();
  }
}
