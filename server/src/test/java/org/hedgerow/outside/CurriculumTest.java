package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

/**
 * Our alignments against the grapheme tables of the National Curriculum in England, English
 * Appendix 1 (Department for Education, 2013; Open Government Licence v3.0). The tables give
 * Received Pronunciation; what they say of letters does not depend on the accent, and the sounds
 * are turned into General American by the usual correspondences.
 */
class CurriculumTest {

  private static final Map<String, String> DISAGREE =
      Map.of(
          "ge age", "we let the e mark the vowel: a-e /eɪ/ and g /dʒ/, as in face and five",
          "a talk", "we count the silent l to the vowel: al /ɔ/");

  private static final Map<String, String> GENERAL_AMERICAN =
      Map.ofEntries(
          Map.entry("iː", "i"),
          Map.entry("uː", "u"),
          Map.entry("juː", "ju"),
          Map.entry("əʊ", "oʊ"),
          Map.entry("ɜː", "ɝ"),
          Map.entry("ɑː", "ɑɹ"),
          Map.entry("ɪə", "ɪɹ"),
          Map.entry("ɛə", "ɛɹ"),
          Map.entry("ə", "ɚ"),
          Map.entry("r", "ɹ"),
          Map.entry("l|əl", "əl"),
          Map.entry("iː|ɪ", "i"));

  private static final Lexicon LEXICON = SeededLexicon.get();

  @Test
  void graphemesAndSoundsAreWhereTheTablesHaveThem() {
    List<String> wrong = new ArrayList<>();
    List<List<String>> rows = Published.rows("national-curriculum-2013-appendix-1-sample.tsv");
    for (List<String> row : rows) {
      if (!agrees(row.get(0), row.get(1), row.get(2).toLowerCase(Locale.ROOT))) {
        wrong.add(row.get(0) + " " + row.get(2));
      }
    }
    assertThat(rows).hasSizeGreaterThan(160);
    assertThat(wrong).containsExactlyInAnyOrderElementsOf(DISAGREE.keySet());
  }

  private static boolean agrees(String grapheme, String sound, String word) {
    return LEXICON.word(word).stream()
        .flatMap(entry -> entry.pronunciations().stream())
        .flatMap(pronunciation -> pronunciation.alignment().stream())
        .flatMap(alignment -> alignment.spans().stream())
        .filter(span -> span.grapheme().text().equals(grapheme))
        .anyMatch(span -> isSame(sound, span));
  }

  private static boolean isSame(String sound, Span span) {
    String ours = Sound.joined(span.sounds());
    return switch (sound) {
      case "ɔː" -> ours.equals("ɔ") || ours.equals("ɔɹ");
      case "ɒ" -> ours.equals("ɑ") || ours.equals("ɔ");
      case "ɪd" -> ours.equals("ɪd") || ours.equals("əd");
      default -> ours.equals(GENERAL_AMERICAN.getOrDefault(sound, sound));
    };
  }
}
