package org.hedgerow.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.sentences.SentenceChecker;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.ComposedSentences;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.CompositionRequest;
import org.hedgerow.sentences.compose.SentenceKind;

/**
 * How fast sentences are checked and composed, on one thread, after warming up. Prints the
 * percentiles of checking a sentence of 12 words, each with a checker of its own as requests have
 * it, and how many sentences are composed and ranked in a second for a common value.
 */
public final class SentenceSpeed {

  private static final int CHECKS = 4_000;
  private static final int ORDERS = 30;

  private static final List<String> PARTS =
      List.of(
          "The goat and the toad sat on the",
          "My old dog and the sheep went to the",
          "Can a boat float on a lake or a",
          "Put the wet soap and the toast on the");
  private static final List<String> ENDS =
      List.of("boat by the road.", "green hill at noon.", "coat in a bag.", "tree with two birds.");

  private static final List<String> BLOCKED_PARTS =
      List.of("The queen made a cake for the", "My friend threw the ball to the");
  private static final List<String> BLOCKED_ENDS =
      List.of("goat on the boat.", "toad by the road.", "foal in a coat.");

  private static final List<String> SLIPS =
      List.of("Thr gaot and the toad sat on teh", "My old dgo and the shep went to the");

  private SentenceSpeed() {}

  public static void main(String[] args) {
    Lexicon lexicon = SeededLexicon.get();
    Correspondence oa = lexicon.catalogue().value("oa", 1).orElseThrow();
    SentenceStandard standard =
        new SentenceStandard(
            Standard.of(oa),
            List.of("en-US", "en-GB"),
            lexicon.plans().sightWords().usualWords(),
            SentenceStandard.DEFAULT_TARGETS,
            SentenceStandard.DEFAULT_WORDS);
    for (int round = 0; round < 2; round++) {
      check("no or one blocked word", PARTS, ENDS, lexicon, standard);
      check("three blocked words", BLOCKED_PARTS, BLOCKED_ENDS, lexicon, standard);
      check("two or three slips", SLIPS, ENDS, lexicon, standard);
    }
    compose(lexicon, standard);
    compose(lexicon, standard);
  }

  private static void check(
      String what,
      List<String> parts,
      List<String> ends,
      Lexicon lexicon,
      SentenceStandard standard) {
    List<String> sentences = new ArrayList<>();
    parts.forEach(part -> ends.forEach(end -> sentences.add(part + " " + end)));
    long[] nanos = new long[CHECKS];
    for (int i = 0; i < CHECKS; i++) {
      String text = sentences.get(i % sentences.size());
      long start = System.nanoTime();
      new SentenceChecker(lexicon, standard).check(text);
      nanos[i] = System.nanoTime() - start;
    }
    Arrays.sort(nanos);
    System.out.printf(
        "check of 11 to 12 words, %s: p50 %.3f ms, p99 %.3f ms, worst %.3f ms%n",
        what, nanos[CHECKS / 2] / 1e6, nanos[CHECKS * 99 / 100] / 1e6, nanos[CHECKS - 1] / 1e6);
  }

  private static void compose(Lexicon lexicon, SentenceStandard standard) {
    Composer composer = SeededComposer.get();
    int ranked = 0;
    int given = 0;
    long start = System.nanoTime();
    for (int seed = 0; seed < ORDERS; seed++) {
      ComposedSentences drafts =
          composer.compose(
              new CompositionRequest(10, seed, Set.of(), Set.of(SentenceKind.values())),
              lexicon,
              standard);
      given += drafts.sentences().size();
      ranked += drafts.ranked();
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(
        "orders of 10: %.0f ms each; composed and ranked %.0f a second, given out %.0f a second%n",
        1000 * seconds / ORDERS, ranked / seconds, given / seconds);
  }
}
