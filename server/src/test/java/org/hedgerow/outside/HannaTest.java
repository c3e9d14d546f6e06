package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often a spelling stands for a sound, against P. R. Hanna, J. S. Hanna, R. E. Hodges and E. H.
 * Rudorf, Phoneme–Grapheme Correspondences as Cues to Spelling Improvement (US Office of Education,
 * 1966): percentages from memory, over 17,000 words without inflected forms. Ours are over the
 * words of common use without inflected forms; the word lists differ, so a share may differ by 12
 * points. What he counts apart by a silent e (ge, ve, ou with e) is added up here.
 */
class HannaTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final Map<String, Integer> SPELT = new HashMap<>();
  private static final Map<String, Integer> SAID = new HashMap<>();

  @BeforeAll
  static void count() {
    LEXICON.words().stream()
        .filter(word -> word.commonness() >= 2 && !word.is(Tag.INFLECTED) && !word.is(Tag.NAME))
        .forEach(HannaTest::count);
  }

  private static void count(Word word) {
    word.pronunciations().get(0).alignment().map(Alignment::spans).stream()
        .flatMap(List::stream)
        .forEach(HannaTest::count);
  }

  private static void count(Span span) {
    String sound = Sound.joined(span.sounds());
    SAID.merge(sound, 1, Integer::sum);
    SPELT.merge(span.grapheme() + " " + sound, 1, Integer::sum);
  }

  @ParameterizedTest
  @CsvSource({
    "f, f, 78",
    "ff, f, 9",
    "ph, f, 12",
    "c, k, 73",
    "k, k, 13",
    "ck, k, 6",
    "s, s, 73",
    "c, s, 17",
    "ss, s, 7",
    "g ge gi, dʒ, 66",
    "j, dʒ, 22",
    "dge, dʒ, 3",
    "ti, ʃ, 53",
    "sh, ʃ, 26",
    "ci, ʃ, 5",
    "ch, tʃ, 55",
    "t, tʃ, 31",
    "tch, tʃ, 11",
    "o, oʊ, 73",
    "o-e, oʊ, 14",
    "oa, oʊ, 5",
    "ow, oʊ, 5",
    "a, eɪ, 45",
    "a-e, eɪ, 35",
    "ai, eɪ, 9",
    "ay, eɪ, 6",
    "ee, i, 10",
    "ea, i, 10",
    "i, aɪ, 37",
    "i-e, aɪ, 37",
    "y, aɪ, 14",
    "igh, aɪ, 6",
    "s, z, 64",
    "z, z, 23",
    "ng, ŋ, 59",
    "n, ŋ, 41",
    "oi, ɔɪ, 62",
    "oy, ɔɪ, 32",
    "ou, aʊ, 69",
    "ow, aʊ, 29",
    "b, b, 97",
    "d, d, 98",
    "m, m, 94",
    "n, n, 97",
    "p, p, 96",
    "t, t, 97",
    "l, l, 91",
    "v ve, v, 99.5"
  })
  void shareOfSpelling(String graphemes, String sound, double percent) {
    int spelt =
        Stream.of(graphemes.split(" ", -1))
            .mapToInt(grapheme -> SPELT.getOrDefault(grapheme + " " + sound, 0))
            .sum();
    double ours = 100.0 * spelt / SAID.getOrDefault(sound, 1);
    assertThat(ours).isCloseTo(percent, within(12.0));
  }
}
