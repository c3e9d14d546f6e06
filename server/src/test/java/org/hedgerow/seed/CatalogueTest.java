package org.hedgerow.seed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Realisation;
import org.junit.jupiter.api.Test;

/** The catalogue against the dictionary. */
class CatalogueTest {

  private static final Lexicon LEXICON = SeededLexicon.get();

  @Test
  void isLarge() {
    assertThat(LEXICON.catalogue().size()).isGreaterThanOrEqualTo(300);
  }

  @Test
  void everyKeyWordShowsItsCorrespondence() {
    List<String> wrong =
        LEXICON.catalogue().correspondences().stream()
            .filter(
                each -> LEXICON.word(each.keyWord()).filter(word -> holds(word, each)).isEmpty())
            .map(each -> each.label() + " " + each.keyWord())
            .toList();
    assertThat(wrong).isEmpty();
  }

  /** Otherwise the letters and sounds of a word would not tell which row it is. */
  @Test
  void noTwoRowsOfAGraphemeSayTheSameInAnAccent() {
    for (AccentCatalogue accent : LEXICON.accents()) {
      assertThat(accent.realisations())
          .extracting(Realisation::toString)
          .as(accent.accent().tag())
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void keyWordsOfTaughtValuesAreFitForChildren() {
    for (String grapheme : LEXICON.catalogue().phonograms()) {
      for (Correspondence each : LEXICON.catalogue().values(grapheme)) {
        Word word = LEXICON.word(each.keyWord()).orElseThrow();
        assertThat(word.is(Tag.NOT_FOR_CHILDREN) || word.is(Tag.NAME)).as(each.keyWord()).isFalse();
      }
    }
  }

  private static boolean holds(Word word, Correspondence correspondence) {
    return word.pronunciations().stream()
        .flatMap(said -> said.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .anyMatch(span -> span.correspondence().equals(correspondence));
  }

  @Test
  void valuesAreNumberedCommonestFirst() {
    Map<Correspondence, Integer> counts = counts();
    for (String grapheme : LEXICON.catalogue().phonograms()) {
      List<Integer> inOrder =
          LEXICON.catalogue().values(grapheme).stream()
              .map(each -> counts.getOrDefault(each, 0))
              .toList();
      assertThat(inOrder).as(grapheme).isSortedAccordingTo((a, b) -> b - a);
    }
  }

  private static Map<Correspondence, Integer> counts() {
    Map<Correspondence, Integer> counts = new HashMap<>();
    for (Word word : LEXICON.words()) {
      if (word.commonness() >= 2 && !isSpeltSoInBritainOnly(word)) {
        word.pronunciationsIn("en-US").stream()
            .flatMap(said -> said.alignment().stream())
            .flatMap(alignment -> alignment.spans().stream())
            .forEach(span -> counts.merge(span.correspondence(), 1, Integer::sum));
      }
    }
    return counts;
  }

  private static boolean isSpeltSoInBritainOnly(Word word) {
    return word.tag(Tag.REGION).filter(tag -> tag.value().equals("british")).isPresent();
  }
}
