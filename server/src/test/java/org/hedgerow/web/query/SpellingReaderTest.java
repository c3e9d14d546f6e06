package org.hedgerow.web.query;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words as people type them. */
class SpellingReaderTest {

  @ParameterizedTest
  @ValueSource(strings = {"Wool", "WOOL", " wool ", "wOOL"})
  void readsCapitalsAsSmallLetters(String typed) {
    assertThat(new SpellingReader(ValidationErrors.ofQuery()).read("word", typed)).contains("wool");
  }

  @Test
  void foldsInTheSameWayEverywhere() {
    Locale usual = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag("tr"));
    try {
      assertThat(new SpellingReader(ValidationErrors.ofQuery()).read("word", "SHIP"))
          .contains("ship");
    } finally {
      Locale.setDefault(usual);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          ~~          | empty
          w00l        | a digit
          don't       | an apostrophe
          don’t       | an apostrophe
          ice-cream   | a hyphen
          ice cream   | a space
          café        | the letter “é”
          shıp        | the letter “ı”
          SHİP        | the letter “İ”
          boo\u212A   | the letter
          🐑          | the character “🐑”
          <b>wool</b> | the character “<”
          '; drop table words; -- | an apostrophe
          """)
  void saysWhatStandsInTheWay(String typed, String obstacle) {
    assertThat(error(typed.replace("\\u212A", "\u212A")).message()).contains(obstacle);
  }

  @Test
  void refusesNulAndLongWords() {
    assertThat(error("wo\u0000ol").message()).contains("the character “�”");
    assertThat(error("a".repeat(200)).message()).contains("too long").hasSizeLessThan(120);
    assertThat(new SpellingReader(ValidationErrors.ofQuery()).read("word", "a".repeat(40)))
        .isPresent();
  }

  private static ValidationError error(String typed) {
    ValidationErrors errors = ValidationErrors.ofQuery();
    assertThat(new SpellingReader(errors).read("word", typed)).isEmpty();
    return catchThrowableOfType(InvalidQueryException.class, errors::throwIfAny).errors().get(0);
  }
}
