package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Parameters in a teacher's words. */
class NarrowingTest {

  @ParameterizedTest
  @CsvSource({
    "letters, 4, 4 letters",
    "letters, 3-5, 3 to 5 letters",
    "letters, 7-40, 7 letters or more",
    "letters, satpin, only the letters s a t p i n",
    "syllables, 1, 1 syllable",
    "syllables, 3-9, 3 syllables or more",
    "position, start, at the start",
    "position, middle, in the middle",
    "shape, cvc, shape cvc",
    "commonness, 1, rare words too",
    "taught, 'ch,oo2', 'taught already: ch, oo2'",
    "picturable, 2, can be drawn",
    "pictured, true, only words with a picture",
    "part-of-speech, noun, nouns",
    "meaning, 'food,plant', food and drink or plants",
    "mark, starter, only the starter set",
    "sort, picturable, best to draw first",
    "include, not-for-children, also words not for children",
    "status, approved, approved words only"
  })
  void saysWhatIsAskedFor(String name, String value, String words) {
    assertThat(ChoiceWords.of(name, value)).isEqualTo(words);
  }
}
