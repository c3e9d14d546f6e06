package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearbyWordsTest {
  private static final int ROUNDS = 30;

  private final Lexicon lexicon = SeededLexicon.get();
  private final DamerauLevenshteinDistance distance = new DamerauLevenshteinDistance();

  @ParameterizedTest
  @CsvSource({"gaot, goat", "boatt, boat", "elephent, elephant", "sheeep, sheep", "rian, rain"})
  void findsWhatASlipWasMeantFor(String slip, String meant) {
    assertThat(lexicon.nearby(slip)).contains(meant);
  }

  @Test
  void findsNothingNearNonsense() {
    assertThat(lexicon.nearby("qqqqqqqq")).isEmpty();
    assertThat(lexicon.nearby("")).allSatisfy(word -> assertThat(word).hasSizeLessThan(3));
    assertThat(lexicon.nearby("naïve café")).isEmpty();
    assertThat(lexicon.nearby("boat".repeat(500))).isEmpty();
  }

  /** Every word of the bank is measured with the library, for words with some slips in them. */
  @Test
  void noWordThatIsNearerIsPassedOver() {
    Random random = new Random(5);
    List<Word> common =
        lexicon.words().stream()
            .filter(word -> word.commonness() >= WordQuery.DEFAULT_COMMONNESS)
            .filter(word -> !word.is(Tag.NAME) && !word.is(Tag.NOT_FOR_CHILDREN))
            .toList();
    for (int round = 0; round < ROUNDS; round++) {
      String slip = slip(common.get(random.nextInt(common.size())).spelling(), random);
      List<Integer> nearest =
          common.stream()
              .map(word -> distance.apply(word.spelling(), slip))
              .filter(changes -> changes > 0 && changes <= 2)
              .sorted()
              .limit(3)
              .toList();
      assertThat(lexicon.nearby(slip).stream().map(word -> distance.apply(word, slip)))
          .as(slip)
          .isEqualTo(nearest);
    }
  }

  private static String slip(String word, Random random) {
    StringBuilder letters = new StringBuilder(word);
    int place = random.nextInt(word.length());
    char letter = (char) ('a' + random.nextInt(26));
    switch (random.nextInt(4)) {
      case 0 -> letters.insert(place, letter);
      case 1 -> letters.deleteCharAt(place);
      case 2 -> letters.setCharAt(place, letter);
      default -> letters.append(letters.charAt(place)).deleteCharAt(place);
    }
    return letters.toString();
  }

  @Test
  void followsWhatEditionsChange() {
    Word splosh =
        new Word(
            "splosh",
            Status.APPROVED,
            3,
            2,
            List.of(),
            lexicon.word("splash").orElseThrow().pronunciations());
    Lexicon next = lexicon.edition(2, Changes.of(List.of(splosh), Set.of("splash")));
    assertThat(lexicon.nearby("splossh")).contains("splash").doesNotContain("splosh");
    assertThat(next.nearby("splossh")).contains("splosh").doesNotContain("splash");
  }
}
