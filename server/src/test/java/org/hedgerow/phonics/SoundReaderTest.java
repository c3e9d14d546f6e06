package org.hedgerow.phonics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SoundReaderTest {

  private static final SoundReader READER =
      new SoundReader(SeededLexicon.get().accent("en-US").orElseThrow().accent());

  /** X-SAMPA of the same word by Wells's table. */
  @ParameterizedTest
  @ValueSource(strings = {"tʃ ɛ ɹ i", "CH EH1 R IY0", "tS E r\\ i", "  tʃ  ɛ  r i "})
  void readsThreeNotations(String cherry) {
    assertThat(Sound.spaced(READER.read(cherry))).isEqualTo("tʃ ɛ ɹ i");
  }

  @Test
  void unstressedVowelsOfArpabetAreReduced() {
    assertThat(Sound.spaced(READER.read("AH0 B AH1 V ER0 B ER1 D"))).isEqualTo("ə b ʌ v ɚ b ɝ d");
  }

  @Test
  void namesTheSoundThatItDoesNotKnow() {
    assertThatThrownBy(() -> READER.read("b ø t"))
        .isInstanceOfSatisfying(
            UnknownSoundException.class, problem -> assertThat(problem.symbol()).isEqualTo("ø"));
  }
}
