package org.hedgerow.web.pages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.reading.Standard;

/** The default lists of several accents, and what they share. */
final class SharedWords {

  private SharedWords() {}

  /** The words that stand in the default list of every accent. */
  static List<Word> of(Lexicon lexicon, List<String> accents, Standard standard) {
    List<Word> shared = new ArrayList<>(lexicon.find(WordQuery.of(accents.get(0), standard)));
    accents.stream()
        .skip(1)
        .forEach(
            accent ->
                shared.retainAll(new HashSet<>(lexicon.find(WordQuery.of(accent, standard)))));
    return shared;
  }
}
