package org.hedgerow.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a check says of words of the dictionary; which words fit is common practice, no source. */
class WordCheckerTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final WordChecker CHECKER = new WordChecker(LEXICON.catalogue());

  @ParameterizedTest
  @CsvSource({
    "boat, oa, 1, PASS", "toad, oa, 1, PASS", "moon, oo, 1, PASS", "wool, oo, 2, PASS",
    "wool, oo, 1, FAIL", "sheep, sh, 1, FAIL", "church, ch, 1, FAIL", "catch, tch, 1, PASS",
    "catch, ch, 1, FAIL", "cake, a-e, 1, PASS", "cage, a-e, 1, FAIL", "head, ea, 2, PASS",
    "car, ar, 1, PASS", "night, igh, 1, PASS", "boats, oa, 1, FAIL", "roof, oo, 1, LOOK",
    "knight, igh, 1, FAIL", "lemon, o, 1, FAIL"
  })
  void verdicts(String word, String grapheme, int value, Verdict verdict) {
    assertThat(check(word, Standard.of(value(grapheme, value))).verdict()).isEqualTo(verdict);
  }

  @ParameterizedTest
  @CsvSource({
    "sheep, sh, 1, second-phonogram", "cat, sh, 1, no-target", "wool, oo, 1, other-value",
    "church, ch, 1, repeated-target", "come, o, 2, silent-letter", "one, o, 1, other-value",
    "lemon, o, 1, no-target", "mishap, sh, 1, false-pair", "roof, oo, 1, several-pronunciations",
    "dogs, oa, 1, inflected", "johnson, oa, 1, name", "zxqj, oa, 1, unknown-word"
  })
  void findings(String word, String grapheme, int value, String code) {
    List<Finding> findings = check(word, Standard.of(value(grapheme, value))).findings();
    assertThat(findings).extracting(finding -> finding.code().label()).contains(code);
  }

  @Test
  void messagesNameLettersAndSounds() {
    Check check = check("sheep", Standard.of(value("sh", 1)));
    assertThat(check.findings())
        .containsExactly(
            new Finding(
                FindingCode.SECOND_PHONOGRAM,
                "en-US",
                List.of(2, 3),
                "ee says /i/ here: a second phonogram"));
  }

  @Test
  void taughtPhonogramsNoLongerFail() {
    Standard taught =
        new Standard(ReadingRules.DEFAULT, Set.of(value("sh", 1)), Set.of(value("ee", 1)));
    assertThat(check("sheep", taught).verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void tchIsReadWhereChIsTaught() {
    Standard taught = new Standard(ReadingRules.DEFAULT, Set.of(), Set.of(value("ch", 1)));
    assertThat(check("catch", taught).verdict()).isEqualTo(Verdict.PASS);
    assertThat(check("catch", Standard.basic()).verdict()).isEqualTo(Verdict.FAIL);
  }

  @ParameterizedTest
  @CsvSource({
    "bell, DOUBLED, false",
    "duck, CK, false",
    "bank, N_BEFORE_K, false",
    "box, X, false",
    "lemon, REDUCED_VOWELS, true",
    "pets, INFLECTED_FORMS, true"
  })
  void everySwitchTurnsWords(String word, Switch each, boolean passesWhenOn) {
    ReadingRules turned = ReadingRules.DEFAULT.with(each, passesWhenOn);
    Verdict before = check(word, Standard.basic()).verdict();
    Verdict after = check(word, new Standard(turned, Set.of(), Set.of())).verdict();
    assertThat(before).isEqualTo(passesWhenOn ? Verdict.FAIL : Verdict.PASS);
    assertThat(after).isEqualTo(passesWhenOn ? Verdict.PASS : Verdict.FAIL);
  }

  @Test
  void theSOfAnEndingMaySayZ() {
    ReadingRules inflected = ReadingRules.DEFAULT.with(Switch.INFLECTED_FORMS, true);
    Standard withZ = new Standard(inflected, Set.of(), Set.of());
    Standard withoutZ = new Standard(inflected.with(Switch.S_AS_Z, false), Set.of(), Set.of());
    assertThat(check("dogs", withZ).verdict()).isEqualTo(Verdict.PASS);
    assertThat(check("dogs", withoutZ).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(check("is", withZ).verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void guessesAreMarked() {
    Check check = check("snoat", Standard.of(value("oa", 1)));
    assertThat(check.guessed()).isTrue();
    assertThat(check.verdict()).isEqualTo(Verdict.LOOK);
  }

  private static Check check(String word, Standard standard) {
    return CHECKER.check(LEXICON.subject(word), standard, List.of("en-US"));
  }

  private static Correspondence value(String grapheme, int value) {
    return LEXICON.catalogue().value(grapheme, value).orElseThrow();
  }
}
