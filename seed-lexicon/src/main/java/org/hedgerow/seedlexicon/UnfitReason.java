package org.hedgerow.seedlexicon;

import java.util.Locale;

/** Why a word is kept away from small children. */
public enum UnfitReason {
  SWEARING,
  INSULT,
  SLUR,
  SEXUAL,
  VIOLENCE,
  WEAPONS,
  DEATH,
  DRUGS_ALCOHOL,
  BODY,
  CRIME,
  FEAR,
  /** Nothing wrong with it, but a topic that teachers bring up themselves when they want to. */
  GROWN_UP,
  /** On a published list of rude words, which doesn't say why. */
  LISTED;

  /** The name in the tables, such as {@code drugs-alcohol}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
