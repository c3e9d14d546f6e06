package org.hedgerow.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Accents;
import org.hedgerow.phonics.Arpabet;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every example that every rule carries. */
class ExamplesTest {

  private static final String ACCENT = "en-US";
  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final WordChecker CHECKER = new WordChecker(LEXICON.catalogue());

  @TestFactory
  Stream<DynamicTest> examplesHold() {
    return SpanRules.ALL.stream()
        .flatMap(
            rule ->
                rule.examples().stream()
                    .map(each -> dynamicTest(name(rule, each), () -> holds(rule, each))));
  }

  private static String name(SpanRule rule, Example example) {
    String verb = example.found() ? "finds" : "leaves";
    return "%s %s %s %s".formatted(rule.code().label(), verb, example.word(), example.target());
  }

  private static void holds(SpanRule rule, Example example) {
    Check check = CHECKER.check(subject(example), standard(example.target()), List.of(ACCENT));
    boolean found = check.findings().stream().anyMatch(each -> each.code() == rule.code());
    assertThat(found).as(check.toString()).isEqualTo(example.found());
  }

  @Test
  void everyRuleShowsBothSides() {
    for (SpanRule rule : SpanRules.ALL) {
      assertThat(rule.examples()).as(rule.code().label()).anyMatch(Example::found);
      assertThat(rule.examples()).as(rule.code().label()).anyMatch(each -> !each.found());
    }
  }

  private static CheckedWord subject(Example example) {
    List<Sound> sounds =
        new SoundReader(LEXICON.accent(ACCENT).orElseThrow().accent()).read(example.arpabet());
    assertThat(Sound.spaced(sounds)).isEqualTo(String.join(" ", Arpabet.toIpa(example.arpabet())));
    Pronunciation said =
        Pronunciation.aligned(
            LEXICON.aligner(ACCENT), example.word(), sounds, example.arpabet(), "example", false);
    return new CheckedWord(
        example.word(), List.of(said), Accents.UNKNOWN, Optional.empty(), "", "", true);
  }

  private static Standard standard(String target) {
    if (target.isEmpty()) {
      return Standard.basic();
    }
    String[] parts = target.split(" ", -1);
    Correspondence value =
        LEXICON.catalogue().value(parts[0], Integer.parseInt(parts[1])).orElseThrow();
    return new Standard(ReadingRules.DEFAULT, Set.of(value), Set.of());
  }
}
