package org.hedgerow.web.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.LetterRun;
import org.hedgerow.web.phonograms.Finder;
import org.hedgerow.web.query.ValueCounts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The chart of the first edition. */
class ChartTest {

  private final Lexicon lexicon = SeededLexicon.get();
  private final Chart chart =
      new ChartMaker(new ValueCounts()).chart(lexicon, ChosenAccents.of(lexicon, List.of("en-US")));

  private List<ChartValue> shown() {
    return chart.groups().stream()
        .flatMap(group -> group.entries().stream())
        .flatMap(entry -> entry.values().stream())
        .toList();
  }

  @Test
  void holdsEveryValueThatTheAccentHasOnce() {
    List<Correspondence> taught =
        lexicon.catalogue().correspondences().stream()
            .filter(Correspondence::isTaught)
            .filter(each -> !each.soundsIn(chart.accent()).isEmpty())
            .toList();

    assertThat(shown())
        .extracting(ChartValue::correspondence)
        .containsExactlyInAnyOrderElementsOf(taught);
  }

  @Test
  void everyKeyWordShowsItsPhonogram() {
    for (ChartValue value : chart.values()) {
      String red =
          value.keyWord().stream()
              .filter(LetterRun::phonogram)
              .map(LetterRun::letters)
              .collect(Collectors.joining("-"));
      assertThat(red).as(value.keyWordText()).isEqualTo(value.grapheme());
    }
  }

  /** The bank says which letters of a key word say the value, and the chart must agree. */
  @Test
  void everyKeyWordShowsTheLettersThatTheBankHas() {
    int found = 0;
    for (ChartValue value : chart.values()) {
      for (Alignment alignment : alignments(value.keyWordText())) {
        for (Span span : alignment.spans()) {
          if (span.correspondence().equals(value.correspondence())) {
            assertThat(value.keyWord())
                .isEqualTo(LetterRun.of(value.keyWordText(), span.letters()));
            found++;
          }
        }
      }
    }
    assertThat(found).isGreaterThan(chart.values().size());
  }

  private List<Alignment> alignments(String spelling) {
    return lexicon.word(spelling).stream()
        .flatMap(word -> word.pronunciations().stream())
        .flatMap(pronunciation -> pronunciation.alignment().stream())
        .toList();
  }

  /** Teachers need not read the phonetic alphabet. */
  @Test
  void everySoundHasEverydayWords() {
    assertThat(chart.values()).noneMatch(value -> value.says().words().contains("/"));
  }

  /** Where teachers look for them: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "sh 1, CONSONANTS",
    "qu 1, CONSONANTS",
    "kn 1, CONSONANTS",
    "igh 1, VOWELS",
    "ow 2, VOWELS",
    "a-e 1, SPLIT",
    "ar 1, WITH_R",
    "ear 2, WITH_R",
    "wr 1, CONSONANTS",
    "y 2, SINGLE",
    "c 1, SINGLE",
    "ed 3, ENDINGS",
    "le 1, ENDINGS"
  })
  void standsWhereTeachersLook(String label, ChartSection section) {
    Correspondence value =
        lexicon.catalogue().correspondences().stream()
            .filter(each -> each.isTaught() && each.label().equals(label))
            .findFirst()
            .orElseThrow();

    assertThat(ChartSection.of(value, chart.accent())).isEqualTo(section);
  }

  @Test
  void commonPhonogramsComeFirst() {
    ChartGroup consonants = chart.groups().get(0);

    assertThat(consonants.common())
        .extracting(ChartEntry::grapheme)
        .startsWith("sh")
        .contains("ch");
    assertThat(consonants.rare()).extracting(ChartEntry::grapheme).contains("pn", "bt").isSorted();
  }

  @Test
  void startsWithoutPhonograms() {
    assertThat(chart.shapes())
        .extracting(ChartShape::shape)
        .contains("cvc", "ccvc", "cvcc", "ccvcc")
        .doesNotContain("cvccvc");
  }

  @ParameterizedTest
  @CsvSource({
    "igh, igh eigh aigh",
    "A_E, a-e",
    "/ʃ/, ch ci sci sh si ss ssi s ti ce",
    "boat, oa",
    "night, igh",
    "nigh, igh",
    "zzz, ''"
  })
  void findsByLettersSoundsAndWords(String text, String graphemes) {
    List<String> found =
        new Finder(chart, lexicon)
            .find(text).values().stream().map(ChartValue::grapheme).distinct().toList();

    assertThat(found)
        .containsExactlyInAnyOrderElementsOf(
            graphemes.isEmpty() ? List.of() : List.of(graphemes.split(" ")));
  }

  @Test
  void offersTheNearestPhonogram() {
    assertThat(new Finder(chart, lexicon).nearest("ao"))
        .extracting(ChartValue::grapheme)
        .containsOnly("oa");
  }

  /** What a shape of the chart counts is what its list holds. */
  @Test
  void everyShapeCountsItsList() {
    assertThat(chart.shapes()).extracting(ChartShape::shape).contains("cvc", "ccvc", "cvcc");
    for (ChartShape shape : chart.shapes()) {
      List<Word> list =
          lexicon.find(WordQuery.of("en-US", Standard.basic()).withShape(shape.shape()));
      assertThat(list).as(shape.shape()).hasSize(shape.words());
      assertThat(list.get(0).spelling()).isEqualTo(shape.example());
    }
  }

  @Test
  void aChartOfTwoAccentsCountsTheWordsThatAreInBothLists() {
    List<String> both = List.of("en-US", "en-GB");
    Chart shared =
        new ChartMaker(new ValueCounts()).chart(lexicon, ChosenAccents.of(lexicon, both));
    for (ChartValue value : shared.values()) {
      Standard standard = Standard.of(value.correspondence());
      List<Word> words = lexicon.find(WordQuery.of("en-US", standard));
      words.retainAll(lexicon.find(WordQuery.of("en-GB", standard)));
      assertThat(value.words()).as(value.grapheme()).isEqualTo(words.size());
    }
  }
}
