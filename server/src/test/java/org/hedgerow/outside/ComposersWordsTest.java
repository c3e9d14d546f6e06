package org.hedgerow.outside;

import static java.util.stream.Collectors.toCollection;
import static java.util.stream.Collectors.toUnmodifiableSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.sf.extjwnl.JWNLException;
import net.sf.extjwnl.data.IndexWord;
import net.sf.extjwnl.data.POS;
import net.sf.extjwnl.dictionary.Dictionary;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.CommonnessRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.compose.Adjective;
import org.hedgerow.sentences.compose.Noun;
import org.hedgerow.sentences.compose.Verb;
import org.hedgerow.sentences.compose.VerbFrame;
import org.hedgerow.sentences.compose.WorldKnowledge;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the composer knows of words, against WordNet 3.1 (Princeton University, 2011), which says
 * what part of speech a word can be and in which frames a verb is used, and against the words of
 * the CMU Pronouncing Dictionary and of SCOWL, which say what forms of words there are. Neither is
 * always right or whole: WordNet has no frame for some everyday uses (<em>come to school</em>), and
 * the dictionaries lack some forms. So a few may miss.
 */
class ComposersWordsTest {
  private static final WorldKnowledge KNOWLEDGE = SeedKnowledge.of(SeedLexicon.bundled());

  /** They are in CMUdict, but not in the lists of SCOWL that we read. */
  private static final Set<String> NOT_IN_SCOWL = Set.of("lightbulbs", "raccoons");

  private static Dictionary wordNet;

  @BeforeAll
  static void load() throws JWNLException {
    wordNet = Dictionary.getDefaultResourceInstance();
  }

  private static boolean is(String word, POS part) {
    try {
      return wordNet.lookupIndexWord(part, word) != null;
    } catch (JWNLException problem) {
      throw new IllegalStateException(problem);
    }
  }

  private static Set<String> not(Stream<String> words, Predicate<String> condition) {
    return words.filter(condition.negate()).collect(toCollection(TreeSet::new));
  }

  @Test
  void nounsVerbsAndAdjectivesAreWhatWordNetTakesThemFor() {
    assertThat(not(KNOWLEDGE.nouns().stream().map(Noun::singular), word -> is(word, POS.NOUN)))
        .containsExactly("wetsuit"); // two words in WordNet
    assertThat(not(verbs().map(Verb::base), word -> is(word, POS.VERB))).isEmpty();
    assertThat(
            not(
                KNOWLEDGE.adjectives().stream().map(Adjective::text),
                word -> is(word, POS.ADJECTIVE) || is(word, POS.NOUN)))
        .containsExactly("crunchy"); // nouns too: a tin drum
  }

  private static Stream<Verb> verbs() {
    return KNOWLEDGE.frames().stream().map(VerbFrame::verb).distinct();
  }

  @Test
  void whatIsDoneToSomethingHasAFrameWithAnObject() {
    assertThat(uses(frame -> frame.object().isPresent(), ComposersWordsTest::hasObject))
        .containsExactly("crumble", "swish"); // crumble the bread, swish its tail
  }

  @Test
  void whatIsDoneToNothingHasAFrameWithout() {
    assertThat(uses(frame -> frame.object().isEmpty(), frame -> !hasObject(frame)))
        .containsExactly("search", "splutter"); // search in the attic, splutter in the pool
  }

  private static boolean hasObject(String frame) {
    return frame.matches("\\w+ ----s (something|somebody).*");
  }

  /** Verbs that are used in a way for which WordNet has no frame. */
  private static Set<String> uses(Predicate<VerbFrame> use, Predicate<String> suits) {
    return not(
        KNOWLEDGE.frames().stream().filter(use).map(frame -> frame.verb().base()),
        verb -> frames(verb).anyMatch(suits));
  }

  private static Stream<String> frames(String verb) {
    try {
      IndexWord word = wordNet.lookupIndexWord(POS.VERB, verb);
      return word == null
          ? Stream.empty()
          : word.getSenses().stream().flatMap(sense -> Arrays.stream(sense.getVerbFrames()));
    } catch (JWNLException problem) {
      throw new IllegalStateException(problem);
    }
  }

  @Test
  void formsThatAreMadeStandInTheDictionaries() {
    Stream<String> forms =
        Stream.concat(
            KNOWLEDGE.nouns().stream().map(Noun::plural),
            verbs().flatMap(verb -> Stream.of(verb.third(), verb.past(), verb.ing())));
    List<String> made = forms.filter(form -> !form.isEmpty()).distinct().toList();
    assertThat(made).hasSizeGreaterThan(2_000);
    Set<String> scowl =
        SeedLexicon.bundled().commonness().stream()
            .map(CommonnessRow::word)
            .collect(toUnmodifiableSet());
    assertThat(not(made.stream(), form -> scowl.contains(form) || isInCmudict(form))).isEmpty();
    assertThat(not(made.stream(), ComposersWordsTest::isInCmudict)).hasSizeLessThan(250);
    assertThat(not(made.stream(), scowl::contains))
        .containsExactlyInAnyOrderElementsOf(NOT_IN_SCOWL);
  }

  private static boolean isInCmudict(String form) {
    return SeededLexicon.get().word(form).isPresent();
  }
}
