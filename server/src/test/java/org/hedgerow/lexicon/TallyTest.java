package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;

/** What is counted by what changed is what comes out when everything is counted. */
class TallyTest {
  private static final int EDITIONS = 40;
  private static final int QUERIES = 25;

  private final Lexicon first = SeededLexicon.get();
  private final Random random = new Random(31);

  @Test
  void isThatOfTheWordsInEachOfManyEditions() {
    List<Tally> seen = new ArrayList<>();
    Lexicon newest = first;
    for (int number = 2; number < 2 + EDITIONS; number++) {
      Changes more = RandomChanges.of(newest, number, 1 + random.nextInt(60), number);
      newest = newest.edition(number, more);
      seen.addAll(checked(newest));
    }
    assertThat(seen).anyMatch(tally -> tally.approved() > 0 && tally.starter() > 0);
    assertThat(seen).anyMatch(tally -> tally.drawn() < tally.pictures());
  }

  private List<Tally> checked(Lexicon lexicon) {
    List<Tally> seen = new ArrayList<>();
    for (int i = 0; i < QUERIES; i++) {
      WordQuery query = WordQuery.of(random.nextBoolean() ? "en-US" : "en-GB", standard());
      Tally tally = lexicon.tally(query);
      assertThat(tally).isEqualTo(counted(lexicon.find(query)));
      seen.add(tally);
    }
    return seen;
  }

  private Standard standard() {
    List<Correspondence> taught =
        first.catalogue().correspondences().stream().filter(Correspondence::isTaught).toList();
    return random.nextInt(8) == 0
        ? Standard.basic()
        : Standard.of(taught.get(random.nextInt(taught.size())));
  }

  private static Tally counted(List<Word> words) {
    Predicate<Word> approved = word -> word.status() == Status.APPROVED;
    Predicate<Word> drawable = word -> word.picturable().orElse(0) >= TagFilter.DRAWABLE;
    Predicate<Word> pictured = word -> word.is(Tag.PICTURE);
    return new Tally(
        words.size(),
        count(words, approved),
        count(words, approved.negate().and(word -> word.is(Tag.STARTER))),
        count(words, drawable),
        count(words, pictured),
        count(words, drawable.and(pictured)));
  }

  private static int count(List<Word> words, Predicate<Word> condition) {
    return (int) words.stream().filter(condition).count();
  }

  @Test
  void needsAreInTheOrderOfWhatTheyLack() {
    Lexicon later = first.edition(2, RandomChanges.of(first, 2, 2000, 5));
    List<Need> needs = Needs.in(later, "en-US");
    assertThat(needs).extracting(TallyTest::weight).isSortedAccordingTo((a, b) -> b.compareTo(a));
    assertThat(Needs.order(later, "en-US"))
        .isEqualTo(needs.stream().map(Need::value).toList())
        .isNotEqualTo(Needs.order(first, "en-US"));
  }

  /** The three things that are needed count alike. */
  private static Double weight(Need need) {
    return need.times()
        * (need.lackingWords() / (double) FullMaterial.WORDS
            + need.lackingPictures() / (double) FullMaterial.PICTURES
            + need.lackingSentences() / (double) FullMaterial.SENTENCES);
  }
}
