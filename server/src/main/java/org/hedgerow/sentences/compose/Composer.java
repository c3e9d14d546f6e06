package org.hedgerow.sentences.compose;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.reading.Verdict;
import org.hedgerow.sentences.Articles;
import org.hedgerow.sentences.JudgedWord;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.WordJudge;

/**
 * Makes sentences that pass by construction: every word that is put in one has been judged before.
 * Many are made by chance, within what is known of the world; the most plausible are kept. The same
 * order gives the same sentences. Safe for use by several threads.
 */
public final class Composer {

  /** How many are made for each that is wanted, so that there is something to choose from. */
  private static final int CHOICE = 30;

  private static final int LEAST_CHOICE = 1_200;

  /** How many for each that is wanted make it needless to try a poorer style. */
  private static final int ENOUGH = 6;

  /** How many scenes are filled for each sentence that is wanted, so that some can be left. */
  private static final int SCENES_FOR_EACH = 2;

  /** How often a scene is filled. */
  private static final int FILLINGS = 60;

  /** As people write first; then with more in a sentence, for where words are few. */
  private static final List<Style> STYLES = List.of(Style.PLAIN, Style.DENSE, Style.LAST);

  /** For what a pantry is laid out. */
  private record Question(Lexicon lexicon, SentenceStandard standard, Set<String> wanted) {}

  /** Who asks once mostly asks for others next; a pantry takes a few megabytes. */
  private static final int KEPT = 6;

  private static final Duration KEPT_FOR = Duration.ofMinutes(10);

  private final Cache<Question, Pantry> pantries =
      Caffeine.newBuilder().maximumSize(KEPT).expireAfterAccess(KEPT_FOR).build();

  private final Knowledge knowledge;
  private final Ranking ranking;

  public Composer(Knowledge knowledge, Plausibility plausibility) {
    this.knowledge = knowledge;
    this.ranking = new Ranking(plausibility);
  }

  /**
   * @param standard what the sentences must pass; with exactly one target
   */
  public Drafts compose(DraftOrder order, Lexicon lexicon, SentenceStandard standard) {
    Pantry pantry = pantries.get(new Question(lexicon, standard, order.mustUse()), this::layOut);
    Articles articles = new Articles(lexicon, standard.accents().get(0));
    Chance chance = new Chance(order.seed());
    Map<String, Candidate> found = new LinkedHashMap<>();
    fill(found, pantry, articles, chance, order, standard);
    boolean enoughWritten = scenes(found) >= order.count();
    for (Style style : STYLES) {
      if (enoughWritten || found.size() >= ENOUGH * order.count()) {
        break;
      }
      Patterns patterns =
          new Patterns(pantry, articles::startsWithVowel, style, chance, order.kinds());
      gather(found, patterns, order, standard, style.tries());
    }
    return new Drafts(
        ranking.best(new ArrayList<>(found.values()), order.count()), pantry.targetLemmas());
  }

  private Pantry layOut(Question question) {
    WordJudge judge = new WordJudge(question.lexicon(), question.standard());
    return new Pantry(knowledge, word -> use(judge.judge(word)), question.wanted());
  }

  /** How many sentences are made, at most, to choose some from. */
  public static int candidatesFor(int count) {
    return Math.max(LEAST_CHOICE, CHOICE * count);
  }

  static Use use(JudgedWord word) {
    if (word.verdict() != Verdict.PASS) {
      return Use.NONE;
    }
    return switch (word.judgement()) {
      case TARGET -> Use.TARGET;
      case PHONETIC, TAUGHT -> Use.PLAIN;
      case SIGHT_WORD -> Use.SIGHT;
      case BLOCKED -> Use.NONE;
    };
  }

  /** How many scenes some sentences are from. */
  private static long scenes(Map<String, Candidate> found) {
    return found.values().stream().map(Candidate::pattern).distinct().count();
  }

  /** Each time others of the scenes, so that another seed shows other sentences. */
  private static void fill(
      Map<String, Candidate> found,
      Pantry pantry,
      Articles articles,
      Chance chance,
      DraftOrder order,
      SentenceStandard standard) {
    List<SceneStock> scenes =
        chance.shuffled(pantry.scenes(standard.minimumTargets())).stream()
            .filter(scene -> order.kinds().contains(scene.kind()))
            .toList();
    int used = 0;
    for (SceneStock scene : scenes) {
      int before = found.size();
      for (int filled = 0; filled < FILLINGS; filled++) {
        add(found, scene.fill(chance, articles::startsWithVowel), order, standard);
      }
      used += found.size() > before ? 1 : 0;
      if (used >= SCENES_FOR_EACH * order.count()) {
        return;
      }
    }
  }

  private static void add(
      Map<String, Candidate> found,
      Candidate candidate,
      DraftOrder order,
      SentenceStandard standard) {
    if (isInOrder(candidate.phrase(), order, standard)) {
      found.putIfAbsent(candidate.text(), candidate);
    }
  }

  private static void gather(
      Map<String, Candidate> found,
      Patterns patterns,
      DraftOrder order,
      SentenceStandard standard,
      int tries) {
    int wanted = candidatesFor(order.count());
    for (int tried = 0; tried < tries && found.size() < wanted; tried++) {
      patterns.next().ifPresent(candidate -> add(found, candidate, order, standard));
    }
  }

  private static boolean isInOrder(Phrase phrase, DraftOrder order, SentenceStandard standard) {
    return phrase.targets() >= standard.minimumTargets()
        && phrase.length() <= standard.maximumWords()
        && !phrase.repeats()
        && !phrase.clashes()
        && holdsAll(phrase, order.mustUse());
  }

  private static boolean holdsAll(Phrase phrase, Set<String> words) {
    return words.stream().allMatch(word -> holds(phrase, word));
  }

  private static boolean holds(Phrase phrase, String word) {
    return phrase.pieces().stream()
        .anyMatch(piece -> piece.word().equals(word) || piece.lemma().equals(word));
  }
}
