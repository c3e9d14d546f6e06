package org.hedgerow.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.hedgerow.phonics.Aligner;
import org.hedgerow.phonics.SoundReader;
import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RimeTest {
  private final Aligner aligner = SeededLexicon.get().aligner("en-US");

  @ParameterizedTest
  @CsvSource({
    "cat, k æ t, a t, æ t",
    "lake, l eɪ k, a-e k, eɪ k",
    "hand, h æ n d, a n d, æ n d",
    "rabbit, ɹ æ b ə t, i t, ə t",
    "sea, s i, ea, i"
  })
  void isEverythingFromTheLastVowelOn(
      String spelling, String sounds, String graphemes, String rimeSounds) {
    assertThat(rime(spelling, sounds)).contains(new Rime(graphemes, rimeSounds));
  }

  private Optional<Rime> rime(String spelling, String sounds) {
    return aligner
        .align(spelling, new SoundReader(aligner.accent()).read(sounds))
        .flatMap(Rime::of);
  }
}
