package org.hedgerow.phonics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hedgerow.seed.SeededLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /** /oʊ/ of General American is /əʊ/ in southern British English, and /ɜː/ is its /ɝ/. */
  @ParameterizedTest
  @CsvSource({
    "K OW1 T,  OW1, the sound /oʊ/",
    "OW1,      OW1, the sound /oʊ/",
    "S ER1 F,  ER1, the sound /ɝ/",
    "k oU t,   oU,  the sound /oʊ/",
    "k oʊ t,   oʊ,  no sound of",
    "K XX T,   XX,  no sound of"
  })
  void saysWhichSoundTheAccentLacks(String given, String symbol, String said) {
    SoundReader british =
        new SoundReader(SeededLexicon.get().accent("en-GB").orElseThrow().accent());
    assertThatThrownBy(() -> british.read(given))
        .isInstanceOfSatisfying(
            UnknownSoundException.class,
            problem ->
                assertThat(problem.lackingIn("southern British English"))
                    .startsWith("“" + symbol + "” is " + said)
                    .contains("southern British English"));
  }
}
