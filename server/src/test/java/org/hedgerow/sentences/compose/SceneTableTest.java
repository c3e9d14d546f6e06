package org.hedgerow.sentences.compose;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.SceneRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.languagetool.JLanguageTool;
import org.languagetool.Languages;
import org.languagetool.rules.RuleMatch;

/**
 * Every scene of the table gives sentences for the value that it was written for, in American and
 * British English, and LanguageTool (LGPL, {@code org.languagetool:language-en}), an independent
 * checker of grammar and spelling, finds nothing in them.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SceneTableTest {

  /** Of each scene. */
  private static final int CHECKED = 2;

  private JLanguageTool grammar;

  @BeforeAll
  void load() {
    grammar = new JLanguageTool(Languages.getLanguageForShortCode("en-US"));
  }

  static Stream<List<SceneRow>> scenesOfEachValue() {
    Map<String, List<SceneRow>> byValue =
        SeedLexicon.bundled().scenes().stream()
            .collect(
                groupingBy(row -> row.phonogram() + " " + row.value(), TreeMap::new, toList()));
    return byValue.values().stream();
  }

  @ParameterizedTest
  @MethodSource("scenesOfEachValue")
  void everySceneGivesGrammaticalSentencesForItsValue(List<SceneRow> rows) throws IOException {
    Lexicon lexicon = SeededLexicon.get();
    SceneRow first = rows.get(0);
    SceneReading reading =
        new SceneReading(
            lexicon, lexicon.catalogue().value(first.phonogram(), first.value()).orElseThrow());
    for (SceneRow row : rows) {
      Scene scene = Scene.of(SentenceKind.labelled(row.kind()).orElseThrow(), row.scene());
      Set<String> fillings = reading.fillings(scene);
      assertThat(reading.unread(scene)).as(row.scene()).isEmpty();
      assertThat(fillings).as(row.scene()).isNotEmpty();
      for (String text : fillings.stream().limit(CHECKED).toList()) {
        assertThat(grammar.check(text)).as(text).extracting(RuleMatch::getMessage).isEmpty();
      }
    }
  }
}
