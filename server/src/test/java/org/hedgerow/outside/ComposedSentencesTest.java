package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.Draft;
import org.hedgerow.sentences.compose.DraftOrder;
import org.hedgerow.sentences.compose.SentenceKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.languagetool.JLanguageTool;
import org.languagetool.Languages;
import org.languagetool.rules.RuleMatch;

/**
 * Ten sentences for each of the forty values with most words, in both accents, pass our check, and
 * LanguageTool (LGPL, {@code org.languagetool:language-en}), an independent checker of grammar and
 * spelling, finds nothing in them.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ComposedSentencesTest {

  private static final String COMMONEST =
      "er1 y1 a-e1 le1 i-e1 sh1 o1 o-e1 ee1 ar1 ea1 ng1 oo1 ou1 ai1 ch1 or1 al1 or2 n1 ow1 ay1 oa1"
          + " e1 ow2 th1 ve1 aw1 el1 i1 tch1 ar2 oo2 y2 oi1 ur1 dge1 a3 ea2 igh1";

  private static final List<String> BOTH = List.of("en-US", "en-GB");

  private JLanguageTool grammar;

  @BeforeAll
  void load() {
    grammar = new JLanguageTool(Languages.getLanguageForShortCode("en-US"));
  }

  static Stream<String> commonest() {
    return Arrays.stream(COMMONEST.split(" ", -1));
  }

  @ParameterizedTest
  @MethodSource("commonest")
  void tenDifferentSentencesPassAndAreGrammatical(String name) throws IOException {
    Lexicon lexicon = SeededLexicon.get();
    SentenceStandard standard = standard(lexicon, name);
    List<String> texts =
        SeededComposer.get()
            .compose(
                new DraftOrder(10, 1, Set.of(), Set.of(SentenceKind.values())), lexicon, standard)
            .sentences()
            .stream()
            .map(Draft::text)
            .toList();
    assertThat(texts).doesNotHaveDuplicates().hasSize(10);
    SentenceChecker checker = new SentenceChecker(lexicon, standard);
    assertThat(texts)
        .allSatisfy(text -> assertThat(checker.check(text).verdict()).isEqualTo(Verdict.PASS));
    for (String text : texts) {
      assertThat(grammar.check(text)).as(text).extracting(RuleMatch::getMessage).isEmpty();
    }
  }

  private static SentenceStandard standard(Lexicon lexicon, String name) {
    int at = name.length() - 1;
    Correspondence value =
        lexicon
            .catalogue()
            .value(name.substring(0, at), Integer.parseInt(name.substring(at)))
            .orElseThrow();
    return new SentenceStandard(
        Standard.of(value),
        BOTH,
        lexicon.plans().sightWords().usualWords(),
        SentenceStandard.USUAL_TARGETS,
        SentenceStandard.USUAL_WORDS);
  }
}
