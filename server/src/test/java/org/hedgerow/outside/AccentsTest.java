package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Check;
import org.hedgerow.reading.Finding;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What accents say otherwise, after J. C. Wells, Accents of English (Cambridge University Press,
 * 1982), vol. 1, 2.2 and 3.1 (General American and RP), vol. 2, 5.2 (Scotland), vol. 3, 8.3
 * (Australia); single words (tomato, clerk, schedule, lieutenant) are common knowledge, no source.
 */
class AccentsTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final WordChecker CHECKER = new WordChecker(LEXICON.catalogue());

  @ParameterizedTest
  @CsvSource({
    "bath, b ɑː θ, b a θ",
    "trap, t ɹ æ p, t ɹ a p",
    "hot, h ɒ t, h ɔ t",
    "dog, d ɒ ɡ, d ɔ ɡ",
    "taught, t ɔː t, t ɔ t",
    "car, k ɑː, k a ɹ",
    "fern, f ɜː n, f ɛ ɹ n",
    "bird, b ɜː d, b ɪ ɹ d",
    "fur, f ɜː, f ʌ ɹ",
    "horse, h ɔː s, h ɔ ɹ s",
    "hoarse, h ɔː s, h o ɹ s",
    "wool, w ʊ l, w ʉ l",
    "moon, m uː n, m ʉ n",
    "news, n j uː z, n j ʉ z",
    "when, w e n, ʍ ɛ n",
    "loch, l ɒ k, l ɔ x",
    "tomato, t ə m ɑː t əʊ, t ə m a t o",
    "clerk, k l ɑː k, k l a ɹ k",
    "schedule, ʃ e d j uː l, ʃ ɛ d j ʉ l",
    "lieutenant, l e f t e n ə n t, l ɛ f t ɛ n ə n t",
    "hearing, h ɪə ɹ ɪ ŋ, h i ɹ ɪ ŋ",
    "carry, k æ ɹ i, k a ɹ i",
    "story, s t ɔː ɹ i, s t o ɹ i",
    "rabbit, ɹ æ b ɪ t, ɹ a b ɪ t"
  })
  void pronunciations(String word, String southern, String scottish) {
    assertThat(said(word, "en-GB")).containsExactly(southern);
    assertThat(said(word, "en-GB-scotland")).containsExactly(scottish);
  }

  private static List<String> said(String word, String accent) {
    return LEXICON.word(word).orElseThrow().saidIn(accent).stream()
        .map(each -> Sound.spaced(each.sounds()))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "ar, 1, en-GB, car, 0",
    "o, 1, en-GB, go, 0",
    "oo, 1, en-GB-scotland, wool, 0",
    "oo, 1, en-GB, moon, wool",
    "oo, 2, en-GB, wool, moon",
    "a, 2, en-GB, father, want",
    "a, 4, en-GB, want, father",
    "al, 3, en-GB, half, talk",
    "u-e, 2, en-GB, tube, flute",
    "u-e, 1, en-US, tube, cube"
  })
  void valuesOfWords(String grapheme, int value, String accent, String with, String without) {
    assertThat(holds(with, value(grapheme, value), accent)).isTrue();
    assertThat(!without.equals("0") && holds(without, value(grapheme, value), accent)).isFalse();
  }

  private static boolean holds(String word, Correspondence value, String accent) {
    return spans(LEXICON.word(word).orElseThrow(), accent)
        .anyMatch(span -> span.correspondence().equals(value));
  }

  private static Stream<Span> spans(Word word, String accent) {
    return word.saidIn(accent).stream()
        .map(Pronunciation::alignment)
        .flatMap(java.util.Optional::stream)
        .map(Alignment::spans)
        .flatMap(List::stream);
  }

  @Test
  void listsDifferWhereTheyMust() {
    assertThat(basic("en-US")).contains("hot", "dog", "glass", "fast", "hat");
    assertThat(basic("en-GB")).contains("hot", "dog", "hat").doesNotContain("glass", "fast");
    assertThat(basic("en-GB-scotland")).contains("hot", "dog", "glass", "fast", "hat");
    assertThat(list("u-e", 1, "en-US")).contains("flute", "tube");
    assertThat(list("u-e", 1, "en-GB")).contains("flute").doesNotContain("tube");
    assertThat(list("oo", 1, "en-GB-scotland")).contains("wool", "moon");
  }

  @Test
  void aListInSeveralAccentsHoldsWhatPassesInEach() {
    List<String> both = list("th", 1, "en-US", "en-GB");
    assertThat(list("th", 1, "en-US")).contains("bath", "thin");
    assertThat(both).contains("thin").doesNotContain("bath");
    assertThat(both)
        .allSatisfy(
            word ->
                assertThat(check(word, Standard.of(value("th", 1)), "en-US", "en-GB").verdict())
                    .isEqualTo(Verdict.PASS));
  }

  private static List<String> basic(String accent) {
    return words(WordQuery.of(accent, Standard.basic()));
  }

  private static List<String> list(String grapheme, int value, String... accents) {
    WordQuery first = WordQuery.of(accents[0], Standard.of(value(grapheme, value)));
    List<String> words = new java.util.ArrayList<>(words(first));
    for (String accent : accents) {
      words.retainAll(words(WordQuery.of(accent, Standard.of(value(grapheme, value)))));
    }
    return words;
  }

  private static List<String> words(WordQuery query) {
    return LEXICON.find(query).stream().map(Word::spelling).toList();
  }

  @Test
  void theFindingSaysHowAccentsDiffer() {
    Finding bath = differing(check("bath", Standard.of(value("th", 1)), "en-US", "en-GB"));
    assertThat(bath.letters()).containsExactly(1);
    assertThat(bath.message())
        .isEqualTo(
            "a says its basic sound in General American and /ɑː/ (a 2) in southern British English");
    Finding tube = differing(check("tube", Standard.of(value("u-e", 1)), "en-US", "en-GB"));
    assertThat(tube.message())
        .isEqualTo(
            "u-e says /u/ (u-e 1) in General American and /juː/ (u-e 2) in southern British English");
  }

  @Test
  void accentsThatAgreeHaveNothingToSay() {
    assertThat(check("boat", Standard.of(value("oa", 1)), "en-US", "en-GB").findings()).isEmpty();
  }

  private static Check check(String word, Standard standard, String... accents) {
    return CHECKER.check(LEXICON.subject(word), standard, List.of(accents));
  }

  private static Finding differing(Check check) {
    return check.findings().stream()
        .filter(finding -> finding.code() == FindingCode.ACCENTS_DIFFER)
        .findFirst()
        .orElseThrow();
  }

  /** Australian English has a handful of entries; what it does not say itself, en-GB says. */
  @Test
  void anAccentWithFewEntriesFallsBackOpenly() {
    assertThat(said("dance", "en-AU")).containsExactly("d æ n s");
    assertThat(said("bath", "en-AU")).containsExactly("b ɑː θ");
    assertThat(LEXICON.word("bath").orElseThrow().saidIn("en-AU"))
        .extracting(Pronunciation::accent)
        .containsExactly("en-GB");
    assertThat(list("ce", 1, "en-AU")).contains("dance", "fence");
    assertThat(list("ce", 1, "en-GB")).contains("fence").doesNotContain("dance");
  }

  @Test
  void almostEveryCommonWordIsAligned() {
    for (String accent : List.of("en-GB", "en-GB-scotland")) {
      List<Pronunciation> said =
          LEXICON.words().stream()
              .filter(word -> word.commonness() >= 2)
              .flatMap(word -> word.saidIn(accent).stream())
              .toList();
      long unaligned = said.stream().filter(each -> each.alignment().isEmpty()).count();
      assertThat(said).as(accent).hasSizeGreaterThan(30_000);
      assertThat(unaligned).as(accent).isLessThan(said.size() / 200);
    }
  }

  private static Correspondence value(String grapheme, int value) {
    return LEXICON.catalogue().value(grapheme, value).orElseThrow();
  }
}
