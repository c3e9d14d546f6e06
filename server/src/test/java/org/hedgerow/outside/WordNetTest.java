package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.sf.extjwnl.JWNLException;
import net.sf.extjwnl.dictionary.Dictionary;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

/**
 * WordNet 3.1 (Princeton University, 2011) as a second opinion on what is a word: what the default
 * lists hold should be known to it. WordNet has no function words, so some always miss.
 */
class WordNetTest {

  private static final Lexicon LEXICON = SeededLexicon.get();

  @Test
  void listedWordsAreWords() throws JWNLException {
    Dictionary wordNet = Dictionary.getDefaultResourceInstance();
    Set<String> listed = listed();
    List<String> unknown = new java.util.ArrayList<>();
    for (String word : listed) {
      if (wordNet.lookupAllIndexWords(word).size() == 0) {
        unknown.add(word);
      }
    }
    assertThat(listed).hasSizeGreaterThan(3000);
    assertThat(unknown).hasSizeLessThan(listed.size() * 3 / 100);
  }

  private static Set<String> listed() {
    Set<String> listed = new TreeSet<>();
    for (String grapheme : LEXICON.catalogue().phonograms()) {
      for (Correspondence value : LEXICON.catalogue().values(grapheme)) {
        LEXICON.find(WordQuery.of("en-US", Standard.of(value))).stream()
            .map(Word::spelling)
            .forEach(listed::add);
      }
    }
    return listed;
  }
}
