package org.hedgerow.sentences.compose;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import org.hedgerow.caching.Caches;
import org.hedgerow.caching.ComputingCache;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.Articles;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.WordJudge;

/**
 * Makes sentences that pass by construction: every word that is put in one has been judged before.
 * Many are made by random, within what is known of the world; the most plausible are kept. The same
 * order gives the same sentences. Safe for use by several threads.
 */
public final class Composer {

  /** How many are made for each that is wanted, so that there is something to choose from. */
  private static final int CHOICE = 30;

  private static final int MIN_CHOICE = 1_200;

  /** Candidates per requested sentence at which lower-quality styles are skipped. */
  private static final int ENOUGH = 6;

  /** How many scenes are filled for each sentence that is wanted, so that some can be left. */
  private static final int SCENES_FOR_EACH = 2;

  /** How often a scene is filled. */
  private static final int FILLINGS = 60;

  /** As people write first; then with more in a sentence, for where words are few. */
  private static final List<Style> STYLES = List.of(Style.PLAIN, Style.DENSE, Style.LAST);

  /** For what a readable is laid out. */
  private record Question(Lexicon lexicon, SentenceStandard standard, Set<String> wanted) {}

  /** Who asks once mostly asks for others next; a readable takes a few megabytes. */
  private static final int KEPT = 6;

  private static final Duration KEPT_FOR = Duration.ofMinutes(10);

  private final ComputingCache<Question, ReadableWords> readables =
      new ComputingCache<>(Caches.builder().maximumSize(KEPT).expireAfterAccess(KEPT_FOR));

  private final WorldKnowledge knowledge;
  private final Ranking ranking;

  public Composer(WorldKnowledge knowledge, Plausibility plausibility) {
    this.knowledge = knowledge;
    this.ranking = new Ranking(plausibility);
  }

  /**
   * @param standard what the sentences must pass; with exactly one target
   */
  public ComposedSentences compose(
      CompositionRequest order, Lexicon lexicon, SentenceStandard standard) {
    ReadableWords readable =
        readables.get(new Question(lexicon, standard, order.mustUse()), this::layOut);
    Predicate<String> startsWithVowel =
        new Articles(lexicon, standard.accents().get(0))::startsWithVowel;
    SeededRandom random = new SeededRandom(order.seed());
    CandidateSet found = new CandidateSet(order, standard);
    List<ReadableScene> scenes = random.shuffled(readable.scenes(standard.minimumTargets(), order));
    fill(scenes, SCENES_FOR_EACH * order.count(), random, startsWithVowel, found);
    if (found.patterns() < order.count()) {
      for (Style style : STYLES) {
        if (found.size() < ENOUGH * order.count()) {
          Patterns patterns = new Patterns(readable, startsWithVowel, style, random, order.kinds());
          gather(patterns, candidatesFor(order.count()), style.tries(), found);
        }
      }
    }
    return new ComposedSentences(
        ranking.best(found.all(), order.count()), found.size(), readable.targetLemmas());
  }

  private ReadableWords layOut(Question question) {
    WordJudge judge = new WordJudge(question.lexicon(), question.standard());
    Map<String, WordUse> uses = new ConcurrentHashMap<>();
    return new ReadableWords(
        knowledge,
        word -> {
          WordUse known = uses.get(word);
          if (known == null) {
            known = mayPass(word, question) ? use(judge.judgeOnce(word)) : WordUse.NONE;
            uses.put(word, known);
          }
          return known;
        },
        question.wanted());
  }

  /**
   * Whether a word is worth judging. One that the bank doesn't hold never passes, unless it was
   * taught whole or belongs to another word: guessing how it is said would be the longest part of
   * laying out a readable.
   */
  private static boolean mayPass(String word, Question question) {
    return question
        .lexicon()
        .word(word)
        .map(known -> isWrittenSo(known, question))
        .orElseGet(
            () ->
                question.standard().sightWords().contains(word)
                    || word.indexOf(WordJudge.APOSTROPHE) >= 0);
  }

  /** Whether readers of all accents write a word so, or it is asked for all the same. */
  private static boolean isWrittenSo(Word word, Question question) {
    return question.wanted().contains(word.spelling())
        || isSpeltSo(word, question.lexicon(), question.standard().accents());
  }

  private static boolean isSpeltSo(Word word, Lexicon lexicon, List<String> accents) {
    return accents.stream()
        .flatMap(tag -> lexicon.accent(tag).stream())
        .allMatch(accent -> word.isSpeltSoIn(accent.accent().spelling()));
  }

  /** How many sentences are made, at most, to choose some from. */
  private static int candidatesFor(int count) {
    return Math.max(MIN_CHOICE, CHOICE * count);
  }

  static WordUse use(JudgedWord word) {
    if (word.verdict() != Verdict.PASS) {
      return WordUse.NONE;
    }
    return switch (word.judgement()) {
      case TARGET -> WordUse.TARGET;
      case PHONETIC, TAUGHT -> WordUse.PLAIN;
      case SIGHT_WORD -> WordUse.SIGHT;
      case BLOCKED -> WordUse.NONE;
    };
  }

  /** Each time others of the scenes, so that another seed shows other sentences. */
  private static void fill(
      List<ReadableScene> scenes,
      int enough,
      SeededRandom random,
      Predicate<String> startsWithVowel,
      CandidateSet found) {
    for (ReadableScene scene : scenes) {
      for (int filled = 0; filled < FILLINGS; filled++) {
        found.add(scene.fill(random, startsWithVowel));
      }
      if (found.patterns() >= enough) {
        return;
      }
    }
  }

  private static void gather(Patterns patterns, int wanted, int tries, CandidateSet found) {
    for (int tried = 0; tried < tries && found.size() < wanted; tried++) {
      patterns.next().ifPresent(found::add);
    }
  }
}
