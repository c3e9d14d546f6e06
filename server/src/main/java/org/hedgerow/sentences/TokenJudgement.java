package org.hedgerow.sentences;

import java.util.Locale;

/** What a word of a sentence is to a child. */
public enum TokenJudgement {
  /** It holds the phonogram that the sentence is for, once. */
  TARGET,
  /** It says nothing but basic sounds. */
  PHONETIC,
  /** It was taught whole. */
  SIGHT_WORD,
  /** It holds a phonogram that was taught before. */
  TAUGHT,
  /** The child can't read it, or shouldn't meet it here. */
  BLOCKED;

  /** The name in answers, in lower case with a hyphen. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public boolean isAllowed() {
    return this != BLOCKED;
  }
}
