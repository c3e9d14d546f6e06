package org.hedgerow.sentences.compose;

/** What a word is good for in a sentence for one phonogram value. */
public enum WordUse {
  /** It holds the phonogram. */
  TARGET,
  /** It can be read. */
  PLAIN,
  /** It can be read because it was taught whole. */
  SIGHT,
  /** It must not stand there. */
  NONE;

  boolean isAllowed() {
    return this != NONE;
  }
}
