package org.hedgerow.seed;

import java.time.InstantSource;
import org.hedgerow.language.BackgroundModel;
import org.hedgerow.language.TrigramModel;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.sentences.compose.Composer;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.RateLimits;
import org.hedgerow.web.sentences.SentenceOrders;

/** The composer with all it knows; made once for all tests of a run. */
public final class SeededComposer {

  private static final class Holder {
    static final Composer COMPOSER =
        new Composer(
            SeedKnowledge.of(SeedLexicon.bundled()), new BackgroundModel(TrigramModel::bundled));
  }

  private SeededComposer() {}

  /** Orders from one client are limited as on a server that has just started. */
  public static SentenceOrders orders() {
    return new SentenceOrders(
        get(), RateLimits.by(new Clients(false), InstantSource.system()).orders());
  }

  public static Composer get() {
    return Holder.COMPOSER;
  }
}
