package org.hedgerow.phonics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Guesses from nine tenths of the common words, tried on the tenth that they were not made from.
 */
class GuesserTest {

  private static final Lexicon LEXICON = SeededLexicon.get();
  private static final Predicate<Word> HELD_OUT = word -> word.spelling().hashCode() % 10 == 0;
  private static final Guesser GUESSER = learn();

  private static Guesser learn() {
    List<Alignment> known =
        common().stream()
            .filter(HELD_OUT.negate())
            .flatMap(word -> word.pronunciationsIn("en-US").stream())
            .flatMap(pronunciation -> pronunciation.alignment().stream())
            .toList();
    return new Guesser(LEXICON.accents().get(0), known);
  }

  private static List<Word> common() {
    return LEXICON.words().stream().filter(word -> word.commonness() >= 2).toList();
  }

  /** Stress is not guessed, and reduced vowels follow stress: seven in ten is what letters tell. */
  @Test
  void sevenInTenUnseenWordsAreRight() {
    List<Word> unseen = common().stream().filter(HELD_OUT).toList();
    long right = unseen.stream().filter(GuesserTest::isRight).count();
    assertThat(unseen).hasSizeGreaterThan(3000);
    assertThat(right).isGreaterThan(unseen.size() * 68L / 100);
  }

  private static boolean isRight(Word word) {
    return GUESSER.guess(word.spelling()).stream()
        .anyMatch(
            guess ->
                word.pronunciationsIn("en-US").stream()
                    .anyMatch(said -> said.sounds().equals(guess)));
  }

  /** Words that nobody made a dictionary entry for; how they are read is a teacher's judgement. */
  @ParameterizedTest
  @CsvSource({"plock, p l ɑ k", "floam, f l oʊ m", "snark, s n ɑ ɹ k", "thrimp, θ ɹ ɪ m p"})
  void readsWordsThatAreNone(String spelling, String sounds) {
    assertThat(GUESSER.guess(spelling).map(Sound::spaced)).hasValue(sounds);
  }

  @Test
  void doesNotGuessWithoutAVowel() {
    assertThat(GUESSER.guess("zxqj")).isEmpty();
  }
}
