package org.hedgerow.web.view;

import org.hedgerow.phonics.Alignment;
import org.jspecify.annotations.Nullable;

/** How margins are written. */
public final class Margins {

  private static final double HUNDREDTHS = 100;

  private Margins() {}

  /** To two places; null where there is no second best, which JSON has no number for. */
  public static @Nullable Double shown(Alignment alignment) {
    return Double.isInfinite(alignment.margin())
        ? null
        : Math.round(alignment.margin() * HUNDREDTHS) / HUNDREDTHS;
  }
}
