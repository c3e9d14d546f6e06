package org.hedgerow.phonics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpellingContextTest {

  private static final Sound VOWEL = new Sound("ə", true);
  private static final Sound T = new Sound("t", false);
  private static final Sound S = new Sound("s", false);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "start",
        "end",
        "stem end",
        "before vowel",
        "not before vowel",
        "after t d",
        "after sibilant",
        "after fricative",
        "before f k m v"
      })
  void isWrittenAsItIsRead(String text) {
    assertThat(SpellingContext.parse(text).text()).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"middle", "before", "before K", "before ee", " start"})
  void refusesWhatIsNoPlace(String text) {
    assertThatThrownBy(() -> SpellingContext.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("stem end")
        .hasMessageEndingWith(text);
  }

  /** Letters {@code from} to {@code to} of a word, with a vowel or nothing after their sound. */
  @ParameterizedTest
  @CsvSource({
    "start, kn, knee, 0, 2, true", "start, kn, unknown, 2, 4, false",
    "end, ed, jumped, 4, 6, true", "end, ed, reddest, 1, 3, false",
    "stem end, el, camels, 3, 5, true", "stem end, el, labeled, 3, 5, true",
    "stem end, el, elbow, 0, 2, false", "before f k m v, al, talk, 1, 3, true",
    "before f k m v, al, salt, 1, 3, false"
  })
  void asksForLetters(
      String place, String grapheme, String word, int from, int to, boolean expected) {
    assertThat(word.substring(from, to)).isEqualTo(grapheme);
    assertThat(SpellingContext.parse(place).holds(word, from, to, null, null)).isEqualTo(expected);
  }

  @Test
  void asksForSounds() {
    assertThat(SpellingContext.parse("before vowel").holds("motion", 2, 4, null, VOWEL)).isTrue();
    assertThat(SpellingContext.parse("before vowel").holds("motion", 2, 4, null, T)).isFalse();
    assertThat(SpellingContext.parse("not before vowel").holds("car", 1, 3, null, null)).isTrue();
    assertThat(SpellingContext.parse("after t d").holds("hunted", 4, 6, T, null)).isTrue();
    assertThat(
            SpellingContext.parse("after t d").holds("repeatedly", 6, 8, T, new Sound("l", false)))
        .isTrue();
    assertThat(SpellingContext.parse("after t d").holds("materials", 3, 5, T, null)).isFalse();
    assertThat(SpellingContext.parse("after t d").holds("naked", 3, 5, S, null)).isFalse();
    assertThat(SpellingContext.parse("after sibilant").holds("buses", 3, 5, S, null)).isTrue();
    assertThat(SpellingContext.parse("after fricative").holds("prism", 4, 5, T, null)).isFalse();
  }
}
