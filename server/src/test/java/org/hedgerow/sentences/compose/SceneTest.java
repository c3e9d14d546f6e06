package org.hedgerow.sentences.compose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences that somebody wrote with words to choose from. */
class SceneTest {

  private static Set<String> composed(int count, SentenceKind kind, String... scenes) {
    WorldKnowledge world =
        new WorldKnowledge(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(scenes).stream().map(each -> Scene.of(kind, each)).toList());
    SentenceStandard standard =
        new SentenceStandard(
            Standard.of(SeededLexicon.get().catalogue().value("oa", 1).orElseThrow()),
            List.of("en-US", "en-GB"),
            SeededLexicon.get().plans().sightWords().usualWords(),
            SentenceStandard.DEFAULT_TARGETS,
            SentenceStandard.DEFAULT_WORDS);
    return new Composer(world, Plausibility.UNKNOWN)
            .compose(
                new CompositionRequest(count, 1, Set.of(), Set.of(kind)),
                SeededLexicon.get(),
                standard)
            .sentences()
            .stream()
            .map(ComposedSentence::text)
            .collect(Collectors.toSet());
  }

  @Test
  void everyChoiceThatCanBeReadGoesWithEveryOther() {
    assertThat(
            composed(
                20,
                SentenceKind.STATEMENT,
                "the [goat|toad|queen] had a loaf on the [boat|big road|]"))
        .containsExactlyInAnyOrder(
            "The goat had a loaf on the boat.",
            "The toad had a loaf on the boat.",
            "The goat had a loaf on the big road.",
            "The toad had a loaf on the big road.");
  }

  @Test
  void aSceneWithAWordThatCannotBeReadIsLeftOut() {
    assertThat(composed(20, SentenceKind.STATEMENT, "the queen had a goat, a toad and a foal"))
        .isEmpty();
  }

  @Test
  void theArticleSuitsWhatIsChosen() {
    assertThat(composed(20, SentenceKind.COMMAND, "let the goat and toad get a [oak|big boat]"))
        .containsExactlyInAnyOrder(
            "Let the goat and toad get an oak.", "Let the goat and toad get a big boat.");
  }

  @Test
  void commasStayWithTheirWords() {
    assertThat(composed(20, SentenceKind.STATEMENT, "a [goat|big goat], a toad and a foal ran"))
        .containsExactlyInAnyOrder(
            "A goat, a toad and a foal ran.", "A big goat, a toad and a foal ran.");
  }

  @Test
  void sentencesComeFromDifferentScenesFirst() {
    Set<String> three =
        composed(
            3,
            SentenceKind.STATEMENT,
            "the [goat|toad] had [toast|oats] on the [boat|road]",
            "a [foal|goat] ran to the [oak|boat] on the [coast|road]",
            "the [soap|foam] got on the [coat|cloak] of the [goat|toad]");
    assertThat(three)
        .hasSize(3)
        .anyMatch(text -> text.contains(" had "))
        .anyMatch(text -> text.contains(" ran "))
        .anyMatch(text -> text.contains(" got "));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a [goat", "a goat]", "a [goat [toad]]", "a] goat [ran", " "})
  void bracketsMustMatch(String text) {
    assertThatThrownBy(() -> Scene.of(SentenceKind.STATEMENT, text))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
