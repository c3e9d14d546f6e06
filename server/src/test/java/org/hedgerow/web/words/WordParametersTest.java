package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.web.contract.ApiDocument;
import org.hedgerow.web.contract.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of parameters: in a teacher's words, and as the OpenAPI document has it. */
class WordParametersTest {

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
    "rime, cat, ending like cat",
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
    assertThat(WordParameters.words(name, value)).isEqualTo(words);
  }

  @Test
  void theDocumentHasTheSameParameters() {
    assertThat(documented().stream().map(WordParametersTest::name))
        .containsExactlyInAnyOrderElementsOf(
            Stream.concat(
                    WordParameters.NAMES.stream(), Stream.of("format", "bom", "If-None-Match"))
                .toList());
  }

  @Test
  void theDocumentHasTheSameChoices() {
    assertThat(WordParameters.ALL)
        .filteredOn(parameter -> !parameter.choices().isEmpty())
        .hasSizeGreaterThan(6)
        .allSatisfy(
            parameter ->
                assertThat(choices(parameter.name()))
                    .as(parameter.name())
                    .containsExactlyInAnyOrderElementsOf(parameter.choices()));
  }

  private static List<Place> documented() {
    return ApiDocument.published()
        .root()
        .child("paths")
        .child("/api/v1/words")
        .child("get")
        .child("parameters")
        .members()
        .map(Place::target)
        .toList();
  }

  private static String name(Place parameter) {
    return parameter.child("name").node().asString();
  }

  /** Those of a flag are the two that JSON has. */
  private static List<String> choices(String name) {
    Place schema =
        documented().stream()
            .filter(parameter -> name(parameter).equals(name))
            .findFirst()
            .orElseThrow()
            .child("schema");
    if (schema.child("allOf").exists()) {
      schema = schema.child("allOf").members().findFirst().orElseThrow().target();
    }
    if (schema.child("type").node().asString().equals("boolean")) {
      return List.of("true", "false");
    }
    Place of = schema.child("items").exists() ? schema.child("items") : schema;
    Place names = of.child("enum").exists() ? of.child("enum") : of.child("x-extensible-enum");
    return names.members().map(each -> each.node().asString()).toList();
  }
}
