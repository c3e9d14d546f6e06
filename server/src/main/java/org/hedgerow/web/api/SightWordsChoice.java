package org.hedgerow.web.api;

import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.sentences.DolchWords;
import org.hedgerow.web.query.Faults;
import org.jspecify.annotations.Nullable;

/** Which words are taught whole. */
record SightWordsChoice(String name, Set<String> words) {

  private static final SightWordsChoice USUAL = new SightWordsChoice("dolch", DolchWords.ALL);
  private static final SightWordsChoice NONE = new SightWordsChoice("none", Set.of());

  static SightWordsChoice read(Lexicon lexicon, @Nullable String name, Faults faults) {
    if (name == null || name.equals(USUAL.name)) {
      return USUAL;
    }
    if (!name.equals(NONE.name)) {
      faults.invalid("sightWords", "There is no list of sight words named so. Say dolch or none.");
    }
    return NONE;
  }
}
