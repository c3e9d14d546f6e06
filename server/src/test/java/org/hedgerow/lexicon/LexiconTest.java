package org.hedgerow.lexicon;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Switch;
import org.hedgerow.reading.Verdict;
import org.hedgerow.reading.WordChecker;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class LexiconTest {

  private static final String ACCENT = "en-US";
  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final List<String> ACCENTS =
      LEXICON.accents().stream().map(each -> each.accent().tag()).toList();
  private static final WordChecker CHECKER = new WordChecker(LEXICON.catalogue());

  /** The index may be clever; it must answer what checking every word one by one answers. */
  @RepeatedTest(25)
  void listsHoldExactlyTheWordsThatPass(RepetitionInfo repetition) {
    Standard standard = standard(new Random(repetition.getCurrentRepetition()));
    String accent = ACCENTS.get(repetition.getCurrentRepetition() % ACCENTS.size());
    Set<String> listed =
        LEXICON.find(WordQuery.of(accent, standard)).stream().map(Word::spelling).collect(toSet());
    Set<String> passing =
        LEXICON.words().stream()
            .filter(word -> word.commonness() >= WordQuery.DEFAULT_COMMONNESS)
            .filter(word -> isSpeltSo(word, accent) && passes(word, standard, accent))
            .map(Word::spelling)
            .collect(toSet());
    assertThat(listed).isEqualTo(passing);
  }

  private static boolean isSpeltSo(Word word, String accent) {
    String spelling = LEXICON.accent(accent).orElseThrow().accent().spelling();
    return word.tag(Tag.REGION).map(tag -> tag.value().equals(spelling)).orElse(true);
  }

  private static boolean passes(Word word, Standard standard, String accent) {
    return CHECKER.check(word.subject(), standard, List.of(accent)).verdict() == Verdict.PASS;
  }

  /** A random target, one taught value and three switches turned. */
  private static Standard standard(Random random) {
    ReadingRules rules = ReadingRules.DEFAULT;
    for (int i = 0; i < 3; i++) {
      Switch each = List.of(Switch.values()).get(random.nextInt(Switch.values().length));
      rules = rules.with(each, random.nextBoolean());
    }
    Set<Correspondence> targets = random.nextInt(5) == 0 ? Set.of() : Set.of(value(random));
    return new Standard(rules, targets, Set.of(value(random)));
  }

  private static Correspondence value(Random random) {
    List<String> phonograms = LEXICON.catalogue().phonograms();
    List<Correspondence> values =
        LEXICON.catalogue().values(phonograms.get(random.nextInt(phonograms.size())));
    return values.get(random.nextInt(values.size()));
  }

  @Test
  void shapesAreListsWithoutPhonograms() {
    List<String> words = spellings(basic().withShape("cvc"));
    assertThat(words).contains("cat", "dog", "pin", "bell", "duck", "box");
    assertThat(words).doesNotContain("car", "her", "cow", "day", "knot", "has");
  }

  @Test
  void defaultOrderIsCommonestThenShortest() {
    List<Word> words = LEXICON.find(WordQuery.of(ACCENT, Standard.of(value("sh", 1))));
    assertThat(words).isSortedAccordingTo(Order.DEFAULT.comparator());
    assertThat(words).hasSizeGreaterThan(80);
  }

  @Test
  void positionIsWhereTheSoundIsHeard() {
    WordQuery query = WordQuery.of(ACCENT, Standard.of(value("a-e", 1)));
    assertThat(spellings(at(query, Position.START))).contains("ate").doesNotContain("cake", "same");
    assertThat(spellings(at(query, Position.MIDDLE))).contains("same").doesNotContain("ate");
  }

  private static WordQuery at(WordQuery query, Position position) {
    return new WordQuery(
        query.accents(),
        query.standard(),
        query.shape(),
        query.letterCount(),
        query.onlyLetters(),
        query.syllables(),
        Optional.of(position),
        query.rimes(),
        query.commonness(),
        query.status(),
        query.tags(),
        query.differsIn(),
        query.include(),
        query.order());
  }

  @Test
  void nothingUnfitAndNoNamesByDefault() {
    for (String grapheme : LEXICON.catalogue().phonograms()) {
      for (Correspondence value : LEXICON.catalogue().values(grapheme)) {
        assertThat(LEXICON.find(WordQuery.of(ACCENT, Standard.of(value))))
            .noneMatch(word -> word.is(Tag.NAME) || word.is(Tag.NOT_FOR_CHILDREN));
      }
    }
  }

  @Test
  void tagsNarrowAList() {
    TagFilter animals =
        new TagFilter(2, true, Optional.of(PartOfSpeech.NOUN), Set.of(Meaning.ANIMAL), false);
    assertThat(spellings(basic().withTags(animals)))
        .contains("cat", "dog", "pig")
        .doesNotContain("bed", "bat", "run");
  }

  @Test
  void wordsOfAnotherSpellingStayOut() {
    for (Word word : LEXICON.find(basic())) {
      assertThat(word.tag(Tag.REGION).map(Tag::value)).isNotEqualTo(Optional.of("british"));
    }
  }

  @Test
  void wordsThatDifferPassHereAndNotThere() {
    WordQuery query = basic().withDiffersIn("en-GB");
    List<String> there = spellings(WordQuery.of("en-GB", Standard.basic()));
    assertThat(spellings(query)).contains("pass", "fast").doesNotContainAnyElementsOf(there);
  }

  @Test
  void unknownAccentIsRefused() {
    assertThatThrownBy(() -> LEXICON.find(WordQuery.of("en-XX", Standard.basic())))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("en-XX");
  }

  private static List<String> spellings(WordQuery query) {
    return LEXICON.find(query).stream().map(Word::spelling).toList();
  }

  private static WordQuery basic() {
    return WordQuery.of(ACCENT, Standard.basic());
  }

  private static Correspondence value(String grapheme, int value) {
    return LEXICON.catalogue().value(grapheme, value).orElseThrow();
  }
}
