package org.hedgerow.web.words;

import org.hedgerow.phonics.Alignment;
import org.jspecify.annotations.Nullable;

/** How margins are written. */
final class Margins {

  private static final double HUNDREDTHS = 100;

  private Margins() {}

  /** To two places; null where there is no second best, which JSON has no number for. */
  static @Nullable Double shown(Alignment alignment) {
    return Double.isInfinite(alignment.margin())
        ? null
        : Math.round(alignment.margin() * HUNDREDTHS) / HUNDREDTHS;
  }
}
