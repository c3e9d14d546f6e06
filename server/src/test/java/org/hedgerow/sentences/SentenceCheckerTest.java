package org.hedgerow.sentences;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.FindingCode;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences made up here, judged by the rules of the trade: common practice, no source. */
class SentenceCheckerTest {

  private static final List<String> BOTH = List.of("en-US", "en-GB");

  private static Correspondence value(String phonogram, int number) {
    return SeededLexicon.get().catalogue().value(phonogram, number).orElseThrow();
  }

  private static SentenceCheck check(String phonogram, int number, String text) {
    return check(Standard.of(value(phonogram, number)), text);
  }

  private static SentenceCheck check(Standard standard, String text) {
    return new SentenceChecker(
            SeededLexicon.get(),
            new SentenceStandard(
                standard, BOTH, SeededLexicon.get().plans().sightWords().usualWords(), 3, 9))
        .check(text);
  }

  private static TokenJudgement judgement(SentenceCheck check, String word) {
    return check.tokens().stream()
        .filter(token -> token.token().text().equals(word))
        .findFirst()
        .flatMap(JudgedToken::word)
        .map(JudgedWord::judgement)
        .orElseThrow();
  }

  private static List<String> codes(SentenceCheck check) {
    return check.findings().stream().map(finding -> finding.code().label()).toList();
  }

  @Test
  void aSentenceWithThreeTargetsPasses() {
    SentenceCheck check = check("oa", 1, "The goat sat on the boat by the road.");
    assertThat(check.verdict()).isEqualTo(Verdict.PASS);
    assertThat(check.targets()).isEqualTo(3);
    assertThat(check.findings()).isEmpty();
    assertThat(judgement(check, "The")).isEqualTo(TokenJudgement.SIGHT_WORD);
    assertThat(judgement(check, "goat")).isEqualTo(TokenJudgement.TARGET);
    assertThat(judgement(check, "sat")).isEqualTo(TokenJudgement.PHONETIC);
  }

  @Test
  void aHiddenSecondPhonogramIsBlocked() {
    SentenceCheck check = check("oa", 1, "The goat and the toad ate toast by the tree.");
    assertThat(check.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(judgement(check, "tree")).isEqualTo(TokenJudgement.BLOCKED);
    assertThat(codes(check)).containsExactly("blocked-words", "too-long");
  }

  @Test
  void whatWasTaughtMayStandThere() {
    Standard standard =
        new Standard(Standard.basic().rules(), Set.of(value("oa", 1)), Set.of(value("ee", 1)));
    SentenceCheck check = check(standard, "The goat and the toad can see a green boat.");
    assertThat(judgement(check, "green")).isEqualTo(TokenJudgement.TAUGHT);
  }

  @Test
  void valuesAreNeverMixedEvenInSightWords() {
    SentenceCheck check = check("ow", 2, "The brown cow saw a clown in a yellow gown.");
    assertThat(judgement(check, "yellow")).isEqualTo(TokenJudgement.BLOCKED);
    assertThat(
            check.tokens().stream()
                .filter(token -> token.token().text().equals("yellow"))
                .flatMap(token -> token.word().orElseThrow().findings().stream())
                .map(finding -> finding.code()))
        .contains(FindingCode.OTHER_VALUE);
  }

  @Test
  void aSightWordIsATargetOnlyIfItIsOne() {
    SentenceCheck check = check("ee", 1, "We see three green trees.");
    assertThat(judgement(check, "see")).isEqualTo(TokenJudgement.TARGET);
    assertThat(judgement(check, "green")).isEqualTo(TokenJudgement.TARGET);
    assertThat(judgement(check, "We")).isEqualTo(TokenJudgement.SIGHT_WORD);
  }

  @Test
  void thePhonogramTwiceInAWordIsBlocked() {
    assertThat(judgement(check("ng", 1, "A king is singing."), "singing"))
        .isEqualTo(TokenJudgement.BLOCKED);
  }

  @Test
  void tooFewTargetsAreCounted() {
    SentenceCheck check = check("oa", 1, "The goat is on the bed.");
    assertThat(check.targets()).isEqualTo(1);
    assertThat(codes(check)).containsExactly("too-few-targets");
    assertThat(check.findings().get(0).message()).contains("once").contains("2 more words");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          the goat got toast on the boat.     | no-capital
          The goat got toast on the boat      | no-final-mark
          The goat got 2 loads on the boat.   | number
          The goat got toast on the boat 🐐.  | unreadable
          The goat got تمر toast on the boat. | unreadable
          ...                                 | no-words
          """)
  void theFormIsLookedAt(String text, String code) {
    assertThat(codes(check("oa", 1, text))).contains(code);
  }

  @Test
  void whatSomebodySaysEndsBeforeTheQuotationMark() {
    assertThat(codes(check("oa", 1, "“Float the boat to the goat!”"))).isEmpty();
  }

  @Test
  void shortenedFormsAreSightWordsOrWrittenInFull() {
    SentenceCheck check = check("oa", 1, "The goat’s coat isn’t on the boat; don't moan.");
    assertThat(judgement(check, "goat’s")).isEqualTo(TokenJudgement.TARGET);
    assertThat(judgement(check, "isn’t")).isEqualTo(TokenJudgement.BLOCKED);
    assertThat(judgement(check, "don't")).isEqualTo(TokenJudgement.SIGHT_WORD);
  }

  @Test
  void wordsWithAHyphenAreJudgedPartByPart() {
    SentenceCheck check = check("oa", 1, "A coat-rack.");
    assertThat(judgement(check, "coat")).isEqualTo(TokenJudgement.TARGET);
    assertThat(judgement(check, "rack")).isEqualTo(TokenJudgement.PHONETIC);
  }

  @Test
  void aNameIsJudgedByItsLettersAndLookedAt() {
    SentenceCheck check = check("oa", 1, "Pam got the goat on a boat by the road.");
    assertThat(judgement(check, "Pam")).isEqualTo(TokenJudgement.PHONETIC);
    assertThat(check.verdict()).isEqualTo(Verdict.LOOK);
  }

  @Test
  void unknownWordsAreJudgedByAGuessThatIsAdmitted() {
    SentenceCheck check = check("oa", 1, "The bloab is on the boat by the road.");
    assertThat(judgement(check, "bloab")).isEqualTo(TokenJudgement.TARGET);
    assertThat(check.verdict()).isEqualTo(Verdict.LOOK);
    assertThat(check.tokens().get(1).word().orElseThrow().guessed()).isTrue();
  }

  @Test
  void tokensKnowTheirPlace() {
    String text = "Can  a goat float?";
    SentenceCheck check = check("oa", 1, text);
    assertThat(check.tokens())
        .allSatisfy(
            token ->
                assertThat(text.substring(token.token().start(), token.token().end()))
                    .isEqualTo(token.token().text()));
    assertThat(check.tokens()).hasSize(5);
  }

  @Test
  void replacementsAreOfTheSameKindAndInTheSameForm() {
    SentenceCheck check = check("oa", 1, "Six sheep ran to the boat by the road.");
    List<String> instead = replacements(check, "sheep");
    assertThat(instead).isNotEmpty().hasSizeLessThanOrEqualTo(8);
    List<String> insteadOfForm = replacements(check("oa", 1, "The goat jumped by trees."), "trees");
    assertThat(insteadOfForm).allSatisfy(word -> assertThat(word).endsWith("s"));
  }

  private static List<String> replacements(SentenceCheck check, String word) {
    return check.tokens().stream()
        .filter(token -> token.token().text().equals(word))
        .flatMap(token -> token.replacements().stream())
        .toList();
  }

  @Test
  void replacementsCanBeReadInTheSentence() {
    SentenceCheck check = check("oa", 1, "The goat and the sheep ran to the boat.");
    WordJudge judge =
        new WordJudge(
            SeededLexicon.get(),
            new SentenceStandard(
                Standard.of(value("oa", 1)),
                BOTH,
                SeededLexicon.get().plans().sightWords().usualWords(),
                3,
                9));
    assertThat(replacements(check, "sheep"))
        .isNotEmpty()
        .allSatisfy(word -> assertThat(judge.judge(word).verdict()).isEqualTo(Verdict.PASS));
  }

  @Test
  void aSlipGetsTheWordsThatAreSpeltMuchLikeIt() {
    SentenceCheck check = check("oa", 1, "The gaot sat on the baot by the roadd.");
    assertThat(replacements(check, "gaot")).containsExactly("goat", "got");
    assertThat(replacements(check, "baot")).contains("boat");
    assertThat(replacements(check, "roadd")).contains("road");
    assertThat(replacements(check, "sat")).isEmpty();
    assertThat(replacements(check("oa", 1, "A goat on a zzzzzz."), "zzzzzz")).isEmpty();
  }

  @Test
  void aShortenedFormIsNoSlip() {
    assertThat(replacements(check("oa", 1, "The goat can't float."), "can't")).isEmpty();
    assertThat(replacements(check("oa", 1, "The gaot's coat is in a boat."), "gaot's")).isEmpty();
  }

  @Test
  void tenThousandWordsAreJudged() {
    SentenceCheck check = check("oa", 1, "goat ".repeat(10_000));
    assertThat(check.targets()).isEqualTo(10_000);
    assertThat(codes(check)).contains("too-long");
  }

  @Test
  void aLetterByItselfIsNoTarget() {
    SentenceCheck check = check("sh", 1, "Plan B is a ship and a shop.");
    assertThat(check.targets()).isEqualTo(2);
    assertThat(judgement(check, "B")).isNotEqualTo(TokenJudgement.TARGET);
  }
}
