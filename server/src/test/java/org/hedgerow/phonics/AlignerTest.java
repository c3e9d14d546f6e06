package org.hedgerow.phonics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cases that an aligner of English gets wrong most easily, each reasoned in the conventions.
 */
class AlignerTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final Aligner ALIGNER = LEXICON.aligner("en-US");
  private static final SoundReader READER = new SoundReader(ALIGNER.accent());

  @ParameterizedTest
  @CsvSource({
    // split graphemes, and letters that only look split
    "stripe, S T R AY1 P, s:s t:t r:ɹ i-e:aɪ p:p",
    "paste, P EY1 S T, p:p a-e:eɪ s:s t:t",
    "homework, HH OW1 M W ER2 K, h:h o-e:oʊ m:m w:w or:ɝ k:k",
    "bagged, B AE1 G D, b:b a:æ gg:ɡ ed:d",
    "live, L IH1 V, l:l i:ɪ ve:v",
    "live, L AY1 V, l:l i-e:aɪ v:v",
    "come, K AH1 M, c:k o:ʌ m:m e:∅",
    "planet, P L AE1 N AH0 T, p:p l:l a:æ n:n e:ə t:t",
    // seams
    "mishap, M IH1 S HH AE2 P, m:m i:ɪ s:s h:h a:æ p:p",
    "pothole, P AA1 T HH OW2 L, p:p o:ɑ t:t h:h o-e:oʊ l:l",
    "wooden, W UH1 D AH0 N, w:w oo:ʊ d:d e:ə n:n",
    "cooperate, K OW0 AA1 P ER0 EY2 T, c:k o:oʊ o:ɑ p:p er:ɚ a-e:eɪ t:t",
    // endings
    "jumped, JH AH1 M P T, j:dʒ u:ʌ m:m p:p ed:t",
    "pulled, P UH1 L D, p:p u:ʊ ll:l ed:d",
    "hunted, HH AH1 N T AH0 D, h:h u:ʌ n:n t:t ed:ə+d",
    "baked, B EY1 K T, b:b a-e:eɪ k:k d:t",
    "hundred, HH AH1 N D R AH0 D, h:h u:ʌ n:n d:d r:ɹ e:ə d:d",
    "dogs, D AO1 G Z, d:d o:ɔ g:ɡ s:z",
    "boxes, B AA1 K S AH0 Z, b:b o:ɑ x:k+s es:ə+z",
    "singing, S IH1 NG IH0 NG, s:s i:ɪ ng:ŋ i:ɪ ng:ŋ",
    "apple, AE1 P AH0 L, a:æ pp:p le:ə+l",
    "station, S T EY1 SH AH0 N, s:s t:t a:eɪ ti:ʃ o:ə n:n",
    // silent letters, qu, x, nk, ng, tch, dge, ck
    "knight, N AY1 T, kn:n igh:aɪ t:t",
    "queen, K W IY1 N, qu:k+w ee:i n:n",
    "exam, IH0 G Z AE1 M, e:ɪ x:ɡ+z a:æ m:m",
    "bank, B AE1 NG K, b:b a:æ n:ŋ k:k",
    "finger, F IH1 NG G ER0, f:f i:ɪ n:ŋ g:ɡ er:ɚ",
    "engage, EH0 N G EY1 JH, e:ɛ n:n g:ɡ a-e:eɪ g:dʒ",
    "match, M AE1 CH, m:m a:æ tch:tʃ",
    "bridge, B R IH1 JH, b:b r:ɹ i:ɪ dge:dʒ",
    "duck, D AH1 K, d:d u:ʌ ck:k",
    // r after vowels
    "car, K AA1 R, c:k ar:ɑ+ɹ",
    "carry, K AE1 R IY0, c:k a:æ rr:ɹ y:i",
    "story, S T AO1 R IY0, s:s t:t o:ɔ r:ɹ y:i",
    "fairy, F EH1 R IY0, f:f air:ɛ+ɹ y:i",
    "hurry, HH ER1 IY0, h:h urr:ɝ y:i",
    // ju
    "music, M Y UW1 Z IH0 K, m:m u:j+u s:z i:ɪ c:k",
    "cute, K Y UW1 T, c:k u-e:j+u t:t",
    "few, F Y UW1, f:f ew:j+u"
  })
  void aligns(String word, String arpabet, String alignment) {
    assertThat(ALIGNER.align(word, READER.read(arpabet)).map(Alignment::toString))
        .hasValue(alignment);
  }

  @Test
  void everyLetterAndEverySoundStandsInExactlyOneSpan() {
    for (Word word : LEXICON.words()) {
      for (Pronunciation pronunciation : word.pronunciations()) {
        pronunciation.alignment().ifPresent(each -> assertComplete(word, pronunciation, each));
      }
    }
  }

  private static void assertComplete(Word word, Pronunciation said, Alignment alignment) {
    List<Integer> letters =
        alignment.spans().stream().flatMap(span -> span.letters().stream()).sorted().toList();
    assertThat(letters).hasSize(word.spelling().length()).doesNotHaveDuplicates();
    assertThat(alignment.sounds()).isEqualTo(said.sounds());
    for (Span span : alignment.spans()) {
      String spelt =
          span.letters().stream()
              .map(letter -> word.spelling().substring(letter, letter + 1))
              .collect(Collectors.joining());
      assertThat(spelt).isEqualTo(span.grapheme().text().replace("-", ""));
    }
    assertThat(alignment.spans()).isSortedAccordingTo((a, b) -> a.firstLetter() - b.firstLetter());
  }

  @Test
  void fewCommonWordsCannotBeAligned() {
    List<Word> common = LEXICON.words().stream().filter(word -> word.commonness() >= 2).toList();
    List<String> unexplained =
        common.stream()
            .filter(
                word -> word.pronunciations().stream().allMatch(each -> each.alignment().isEmpty()))
            .map(Word::spelling)
            .toList();
    assertThat(unexplained).hasSizeLessThan(common.size() / 200);
  }

  @Test
  void whatCannotBeAlignedIsExplained() {
    String obstacle = ALIGNER.obstacle("cwm", READER.read("K UW1 M"));
    assertThat(ALIGNER.align("cwm", READER.read("K UW1 M"))).isEmpty();
    assertThat(obstacle).contains("\"m\"").contains("/u m/");
  }

  @Test
  void aSecondWayThatIsNearlyAsGoodMakesASmallMargin() {
    assertThat(
            ALIGNER
                .align("traveled", READER.read("T R AE1 V AH0 L D"))
                .orElseThrow()
                .hasSmallMargin())
        .isTrue();
    assertThat(ALIGNER.align("boat", READER.read("B OW1 T")).orElseThrow().hasSmallMargin())
        .isFalse();
  }
}
