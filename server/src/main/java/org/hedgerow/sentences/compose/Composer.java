package org.hedgerow.sentences.compose;

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
 * order gives the same sentences. Immutable.
 */
public final class Composer {

  /** How many are made for each that is wanted, so that there is something to choose from. */
  private static final int CHOICE = 30;

  private static final int LEAST_CHOICE = 600;

  /** When to stop trying where words are few. */
  private static final int TRIES = 40_000;

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
    WordJudge judge = new WordJudge(lexicon, standard);
    Pantry pantry = new Pantry(knowledge, word -> use(judge.judge(word)), order.mustUse());
    Articles articles = new Articles(lexicon, standard.accents().get(0));
    Chance chance = new Chance(order.seed());
    Map<String, Candidate> found = new LinkedHashMap<>();
    for (Style style : List.of(Style.PLAIN, Style.DENSE)) {
      Patterns patterns =
          new Patterns(pantry, articles::startsWithVowel, style, chance, order.kinds());
      gather(found, patterns, order, standard);
    }
    return new Drafts(
        ranking.best(new ArrayList<>(found.values()), order.count()), pantry.targetLemmas());
  }

  private static Use use(JudgedWord word) {
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

  private static void gather(
      Map<String, Candidate> found,
      Patterns patterns,
      DraftOrder order,
      SentenceStandard standard) {
    int wanted = Math.max(LEAST_CHOICE, CHOICE * order.count());
    for (int tried = 0; tried < TRIES + wanted && found.size() < wanted; tried++) {
      patterns
          .next()
          .filter(candidate -> isInOrder(candidate.phrase(), order, standard))
          .ifPresent(candidate -> found.putIfAbsent(candidate.text(), candidate));
    }
  }

  private static boolean isInOrder(Phrase phrase, DraftOrder order, SentenceStandard standard) {
    return phrase.targets() >= standard.minimumTargets()
        && phrase.length() <= standard.maximumWords()
        && !phrase.repeats()
        && holdsAll(phrase, order.mustUse());
  }

  private static boolean holdsAll(Phrase phrase, Set<String> words) {
    return words.stream().allMatch(word -> holds(phrase, word));
  }

  private static boolean holds(Phrase phrase, String word) {
    return phrase.pieces().stream()
        .anyMatch(piece -> piece.text().equals(word) || piece.lemma().equals(word));
  }
}
