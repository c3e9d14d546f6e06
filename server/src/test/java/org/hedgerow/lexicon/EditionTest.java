package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Switch;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** An edition laid over the first answers as if it had been made from all its words at once. */
class EditionTest {
  private static final Lexicon FIRST = SeededLexicon.get();
  private static final Changes SECOND_CHANGES = RandomChanges.of(FIRST, 2, 700, 2);
  private static final Lexicon SECOND = FIRST.edition(2, SECOND_CHANGES);
  private static final Changes THIRD_CHANGES =
      SECOND_CHANGES.and(RandomChanges.of(SECOND, 3, 900, 3));
  private static final Lexicon THIRD = SECOND.edition(3, THIRD_CHANGES);
  private static final Lexicon AT_ONCE =
      new Lexicon(3, FIRST.accents(), wordsOf(THIRD_CHANGES), FIRST.pictures());

  private static List<Word> wordsOf(Changes changes) {
    Map<String, Word> words = new LinkedHashMap<>();
    FIRST.words().forEach(word -> words.put(word.spelling(), word));
    changes.withdrawn().forEach(words::remove);
    changes.words().forEach(word -> words.put(word.spelling(), word));
    return new ArrayList<>(words.values());
  }

  @RepeatedTest(60)
  void answersQueriesAsIfMadeAtOnce(RepetitionInfo repetition) {
    WordQuery query = query(new Random(repetition.getCurrentRepetition()));
    List<Word> expected = AT_ONCE.find(query);
    assertThat(THIRD.find(query)).isEqualTo(expected);
    assertThat(THIRD.count(query)).isEqualTo(expected.size());
  }

  @Test
  void holdsTheSameWordsInTheSameOrder() {
    assertThat(THIRD.words()).isEqualTo(AT_ONCE.words());
  }

  /** As a server makes them, each over the one before. */
  @Test
  void manySmallEditionsOneAfterAnotherComeToTheSame() {
    Changes all = Changes.NONE;
    Lexicon newest = FIRST;
    for (int number = 2; number < 150; number++) {
      Changes more = RandomChanges.of(newest, number, 1 + number % 7, number);
      all = all.and(more);
      newest = newest.edition(number, more);
    }
    Lexicon atOnce = FIRST.edition(149, all);
    assertThat(newest.words()).isEqualTo(atOnce.words());
    for (int i = 0; i < 60; i++) {
      WordQuery query = query(new Random(i));
      assertThat(newest.find(query)).isEqualTo(atOnce.find(query)).hasSize(newest.count(query));
    }
    for (String withdrawn : all.withdrawn()) {
      assertThat(newest.word(withdrawn)).isEmpty();
    }
    assertThat(all.withdrawn()).isNotEmpty();
  }

  @Test
  void looksWordsUpAsIfMadeAtOnce() {
    List<String> spellings = new ArrayList<>(THIRD_CHANGES.withdrawn());
    THIRD_CHANGES.words().forEach(word -> spellings.add(word.spelling()));
    FIRST.words().stream().limit(2000).forEach(word -> spellings.add(word.spelling()));
    for (String spelling : spellings) {
      assertThat(THIRD.word(spelling)).isEqualTo(AT_ONCE.word(spelling));
    }
    assertThat(spellings).anyMatch(spelling -> THIRD.word(spelling).isEmpty());
  }

  @Test
  void changesOfSeveralEditionsComeToThoseOfAll() {
    assertThat(THIRD_CHANGES.words()).extracting(Word::since).contains(2, 3);
    assertThat(THIRD_CHANGES.withdrawn())
        .isNotEmpty()
        .doesNotContainAnyElementsOf(THIRD_CHANGES.words().stream().map(Word::spelling).toList());
  }

  @Test
  void leavesEarlierEditionsAsTheyWere() {
    Lexicon again = FIRST.edition(2, SECOND_CHANGES);
    assertThat(SECOND.words()).isEqualTo(again.words());
    assertThat(SECOND.edition()).isEqualTo(2);
    assertThat(FIRST.words()).allMatch(word -> word.since() == 1);
    assertThat(FIRST.edition()).isEqualTo(1);
  }

  @Test
  void withoutChangesIsTheFirstUnderAnotherNumber() {
    Lexicon same = FIRST.edition(9, Changes.NONE);
    assertThat(same.words()).isSameAs(FIRST.words());
    assertThat(same.edition()).isEqualTo(9);
  }

  @Test
  void guessesStayThoseOfTheFirst() {
    for (String spelling : List.of("plim", "vosh", "troat")) {
      assertThat(THIRD.guess(spelling, "en-US")).isEqualTo(FIRST.guess(spelling, "en-US"));
    }
  }

  private static WordQuery query(Random random) {
    return new WordQuery(
        random.nextInt(3) == 0 ? List.of("en-US", "en-GB") : List.of(accent(random)),
        standard(random),
        random.nextInt(5) == 0 ? Optional.of("cvc") : Optional.empty(),
        random.nextInt(5) == 0 ? Optional.of(new Range(3, 6)) : Optional.empty(),
        Optional.empty(),
        random.nextInt(5) == 0 ? Optional.of(new Range(1, 1)) : Optional.empty(),
        Optional.empty(),
        random.nextInt(6) == 0 ? Set.of(new Rime("a t", "æ t")) : Set.of(),
        1 + random.nextInt(3),
        random.nextInt(4) == 0 ? Optional.of(Status.APPROVED) : Optional.empty(),
        random.nextInt(4) == 0 ? TagFilter.NONE.withPicturable(2) : TagFilter.NONE,
        random.nextInt(4) == 0 ? Optional.of("en-GB") : Optional.empty(),
        random.nextInt(4) == 0 ? Set.of(Tag.NAME, Tag.REGION) : Set.of(),
        one(random, List.of(Order.values())));
  }

  private static String accent(Random random) {
    return one(random, FIRST.accents()).accent().tag();
  }

  private static <T> T one(Random random, List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  private static Standard standard(Random random) {
    ReadingRules rules = ReadingRules.DEFAULT;
    for (int i = 0; i < 3; i++) {
      Switch each = one(random, List.of(Switch.values()));
      rules = rules.with(each, random.nextBoolean());
    }
    Set<Correspondence> targets = random.nextBoolean() ? Set.of() : Set.of(value(random));
    return new Standard(rules, targets, Set.of(value(random)));
  }

  private static Correspondence value(Random random) {
    return one(random, FIRST.catalogue().values(one(random, FIRST.catalogue().phonograms())));
  }
}
