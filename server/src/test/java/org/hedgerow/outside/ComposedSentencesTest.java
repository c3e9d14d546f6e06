package org.hedgerow.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Verdict;
import org.hedgerow.seed.CommonestValues;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.ComposedSentence;
import org.hedgerow.sentences.compose.CompositionRequest;
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

  private static final List<String> BOTH = List.of("en-US", "en-GB");

  private JLanguageTool grammar;

  @BeforeAll
  void load() {
    grammar = new JLanguageTool(Languages.getLanguageForShortCode("en-US"));
  }

  static List<Correspondence> commonest() {
    return CommonestValues.all();
  }

  @ParameterizedTest
  @MethodSource("commonest")
  void tenDifferentSentencesPassAndAreGrammatical(Correspondence value) throws IOException {
    Lexicon lexicon = SeededLexicon.get();
    SentenceStandard standard = standard(lexicon, value);
    List<String> texts =
        SeededComposer.get()
            .compose(
                new CompositionRequest(10, 1, Set.of(), Set.of(SentenceKind.values())),
                lexicon,
                standard)
            .sentences()
            .stream()
            .map(ComposedSentence::text)
            .toList();
    assertThat(texts).doesNotHaveDuplicates().hasSize(10);
    SentenceChecker checker = new SentenceChecker(lexicon, standard);
    assertThat(texts)
        .allSatisfy(text -> assertThat(checker.check(text).verdict()).isEqualTo(Verdict.PASS));
    for (String text : texts) {
      assertThat(grammar.check(text)).as(text).extracting(RuleMatch::getMessage).isEmpty();
    }
  }

  private static SentenceStandard standard(Lexicon lexicon, Correspondence value) {
    return new SentenceStandard(
        Standard.of(value),
        BOTH,
        lexicon.plans().sightWords().usualWords(),
        SentenceStandard.DEFAULT_TARGETS,
        SentenceStandard.DEFAULT_WORDS);
  }
}
