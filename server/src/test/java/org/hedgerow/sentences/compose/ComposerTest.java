package org.hedgerow.sentences.compose;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.junit.jupiter.api.Test;

/** What comes out of a world of a few animals, a boat, a road, an oak and a loaf. */
class ComposerTest {

  /** So many that what is ranked low comes too. */
  private static final int MANY = 500;

  private static final WorldKnowledge WORLD =
      new WorldKnowledge(
          List.of(
              animal("goat", 4),
              animal("toad", 2),
              animal("foal", 4),
              place("boat", 5, "on", "in"),
              place("road", 6, "on"),
              place("oak", 5, "under"),
              place("loaf", 2, "on")),
          List.of(sitting()),
          List.of(),
          List.of(),
          List.of(),
          List.of());

  private static Noun animal(String word, int size) {
    return new Noun(
        word, word + "s", Countability.COUNT, size, "beast", Set.of("beast", "animal"), Set.of());
  }

  private static Noun place(String word, int size, String... landmarks) {
    return new Noun(
        word, "", Countability.COUNT, size, "thing", Set.of("thing"), Set.of(landmarks));
  }

  private static VerbFrame sitting() {
    return new VerbFrame(
        new Verb("sit", "sits", "sat", "sitting"),
        Selection.of(List.of("beast")),
        Optional.empty(),
        false,
        List.of("on", "in", "under").stream()
            .map(preposition -> new PlacePhrase(preposition, Optional.empty()))
            .toList(),
        true,
        List.of(),
        false,
        Set.of(ClauseMode.PAST, ClauseMode.ING, ClauseMode.CAN));
  }

  private static Correspondence value(String phonogram) {
    return SeededLexicon.get().catalogue().value(phonogram, 1).orElseThrow();
  }

  /** For oa, where ng has been taught, so that they can be sitting. */
  private static List<String> composed(int minimum, String... words) {
    SentenceStandard standard =
        new SentenceStandard(
            new Standard(ReadingRules.DEFAULT, Set.of(value("oa")), Set.of(value("ng"))),
            List.of("en-US", "en-GB"),
            SeededLexicon.get().plans().sightWords().usualWords(),
            minimum,
            SentenceStandard.DEFAULT_WORDS);
    return new Composer(WORLD, Plausibility.UNKNOWN)
            .compose(
                new CompositionRequest(MANY, 1, Set.of(words), Set.of(SentenceKind.values())),
                SeededLexicon.get(),
                standard)
            .sentences()
            .stream()
            .map(ComposedSentence::text)
            .toList();
  }

  @Test
  void sentencesAreMadeOfWhatIsKnown() {
    assertThat(composed(2))
        .doesNotHaveDuplicates()
        .allMatch(text -> text.matches("[A-Z][a-z, ]+[.?]"))
        .anyMatch(text -> text.contains("oak"))
        .anyMatch(text -> text.contains("sitting"));
  }

  @Test
  void verbsAgreeWithWhoDoesIt() {
    assertThat(composed(2))
        .noneMatch(text -> text.matches(".*\\b(goats|toads|foals) (is|was)\\b.*"))
        .anyMatch(text -> text.matches(".*\\b(goats|toads|foals) (are|were) sitting\\b.*"));
  }

  @Test
  void articlesSuitTheSoundThatFollows() {
    assertThat(composed(2))
        .noneMatch(text -> text.contains(" a oak"))
        .anyMatch(text -> text.contains(" an oak"));
  }

  @Test
  void nobodySitsOnWhatIsNoBiggerThanThey() {
    assertThat(composed(2)).noneMatch(text -> text.contains("loaf"));
  }

  @Test
  void threeTargetsTakeTwoWhoSitSomewhere() {
    assertThat(composed(3)).isNotEmpty().allMatch(text -> text.contains(" and "));
  }

  @Test
  void wordsThatAreWantedComeInEverySentence() {
    assertThat(composed(2, "foal")).isNotEmpty().allMatch(text -> text.matches(".*\\bfoals?\\b.*"));
  }

  /** Which of some spellings are in the sentences for a value, of all that the bank knows. */
  private static List<String> spelt(String phonogram, List<String> accents, String... spellings) {
    SentenceStandard standard =
        new SentenceStandard(
            Standard.of(value(phonogram)),
            accents,
            SeededLexicon.get().plans().sightWords().usualWords(),
            SentenceStandard.DEFAULT_TARGETS,
            SentenceStandard.DEFAULT_WORDS);
    String all =
        new Composer(SeedKnowledge.of(SeedLexicon.bundled()), Plausibility.UNKNOWN)
                .compose(
                    new CompositionRequest(MANY, 1, Set.of(), Set.of(SentenceKind.values())),
                    SeededLexicon.get(),
                    standard)
                .sentences()
                .stream()
                .map(ComposedSentence::text)
                .collect(joining(" "))
                .toLowerCase(Locale.ROOT);
    return List.of(spellings).stream()
        .filter(word -> Pattern.compile("\\b" + word + "\\b").matcher(all).find())
        .toList();
  }

  @Test
  void eachReaderMeetsTheirOwnSpelling() {
    assertThat(spelt("ay", List.of("en-US"), "mom", "mum", "dad", "gray"))
        .containsExactly("mom", "dad", "gray");
    assertThat(spelt("ay", List.of("en-GB"), "mom", "mum", "dad", "gray"))
        .containsExactly("mum", "dad");
    assertThat(spelt("ay", List.of("en-US", "en-GB"), "mom", "mum", "dad", "gray"))
        .containsExactly("dad");
  }
}
