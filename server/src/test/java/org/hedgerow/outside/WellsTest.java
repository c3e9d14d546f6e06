package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

/**
 * Our vowels against J. C. Wells, Accents of English (Cambridge University Press, 1982): the
 * example words of the 24 standard lexical sets, as he gives them for General American and for
 * Received Pronunciation.
 */
class WellsTest {

  private static final int RECEIVED_PRONUNCIATION = 1;
  private static final int GENERAL_AMERICAN = 2;

  /** Wells's GA symbol in our inventory: r is written ɹ, and FORCE (or) and NORTH (ɔr) are one. */
  private static final Map<String, String> OURS =
      Map.of(
          "e", "ɛ", "o", "oʊ", "ɜr", "ɝ", "ɪr", "ɪ ɹ", "ɛr", "ɛ ɹ", "ɑr", "ɑ ɹ", "ɔr", "ɔ ɹ", "ʊr",
          "ʊ ɹ");

  /** Where the dictionary says otherwise than Wells, with what it says. */
  private static final Map<String, String> DISAGREE =
      Map.of("CURE poor", "the dictionary has /p u ɹ/");

  private static final Lexicon LEXICON = SeededLexicon.get();

  @Test
  void exampleWordsHaveTheVowelOfTheirSetInGeneralAmerican() {
    List<String> wrong = new ArrayList<>();
    for (List<String> row : Published.rows("wells-1982-lexical-sets.tsv")) {
      String given = row.get(GENERAL_AMERICAN);
      String vowel = row.get(0).equals("FORCE") ? "ɔ ɹ" : OURS.getOrDefault(given, given);
      wrong.addAll(without(vowel, row, "en-US"));
    }
    assertThat(wrong).containsExactlyInAnyOrderElementsOf(DISAGREE.keySet());
  }

  /** His symbols are ours but for SQUARE, ɛə. */
  @Test
  void exampleWordsHaveTheVowelOfTheirSetInSouthernBritish() {
    List<String> wrong = new ArrayList<>();
    for (List<String> row : Published.rows("wells-1982-lexical-sets.tsv")) {
      wrong.addAll(without(row.get(RECEIVED_PRONUNCIATION).replace("ɛə", "eə"), row, "en-GB"));
    }
    assertThat(wrong).isEmpty();
  }

  private static List<String> without(String vowel, List<String> row, String accent) {
    List<String> without = new ArrayList<>();
    for (String word : row.get(3).split(", ", -1)) {
      if (!says(word.toLowerCase(Locale.ROOT), vowel, accent)) {
        without.add(row.get(0) + " " + word);
      }
    }
    return without;
  }

  private static boolean says(String word, String vowel, String accent) {
    return LEXICON.word(word).stream()
        .flatMap(entry -> entry.pronunciationsIn(accent).stream())
        .map(Pronunciation::sounds)
        .anyMatch(sounds -> (" " + Sound.spaced(sounds) + " ").contains(" " + vowel + " "));
  }
}
