package org.hedgerow.seed;

import org.hedgerow.language.LoadedLater;
import org.hedgerow.language.TrigramModel;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.compose.Composer;

/** The composer with all it knows; made once for all tests of a run. */
public final class SeededComposer {

  private static final class Holder {
    static final Composer COMPOSER =
        new Composer(
            SeedKnowledge.of(SeedLexicon.bundled()), new LoadedLater(TrigramModel::bundled));
  }

  private SeededComposer() {}

  public static Composer get() {
    return Holder.COMPOSER;
  }
}
