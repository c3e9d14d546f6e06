package org.hedgerow.bench;

import java.util.List;
import java.util.Set;
import org.hedgerow.language.TrigramModel;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;
import org.hedgerow.seed.SeedKnowledge;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.SentenceStandard;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.sentences.compose.Draft;
import org.hedgerow.sentences.compose.DraftOrder;
import org.hedgerow.sentences.compose.Drafts;
import org.hedgerow.sentences.compose.SentenceKind;

/** Prints composed sentences, to be read: {@code DraftReading SEED COUNT oa ea:1 …}. */
public final class DraftReading {
  private DraftReading() {}

  public static void main(String[] args) {
    Lexicon lexicon = SeededLexicon.get();
    Composer composer =
        new Composer(SeedKnowledge.of(SeedLexicon.bundled()), TrigramModel.bundled());
    long seed = Long.parseLong(args[0]);
    int count = Integer.parseInt(args[1]);
    for (String name : args[2].split(",", -1)) {
      String[] parts = name.split(":", -1);
      Correspondence value =
          lexicon
              .catalogue()
              .value(parts[0], parts.length > 1 ? Integer.parseInt(parts[1]) : 1)
              .orElseThrow();
      SentenceStandard standard =
          new SentenceStandard(
              Standard.of(value),
              List.of("en-US", "en-GB"),
              lexicon.plans().sightWords().usualWords(),
              3,
              9);
      long start = System.nanoTime();
      Drafts drafts =
          composer.compose(
              new DraftOrder(count, seed, Set.of(), Set.of(SentenceKind.values())),
              lexicon,
              standard);
      System.out.printf(
          "== %s: %d targets, %d ms%n",
          name, drafts.targets().size(), (System.nanoTime() - start) / 1_000_000);
      for (Draft draft : drafts.sentences()) {
        System.out.printf("%.2f %s%n", draft.plausibility(), draft.text());
      }
      if (drafts.sentences().size() < count)
        System.out.println("   only " + drafts.sentences().size() + " of " + drafts.targets());
    }
  }
}
