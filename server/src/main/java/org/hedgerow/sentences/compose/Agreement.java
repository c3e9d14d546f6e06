package org.hedgerow.sentences.compose;

/** What a verb agrees with. */
enum Agreement {
  /** I. */
  FIRST,
  /** He, she, the goat, the mud. */
  THIRD,
  /** You, we, they, goats. */
  OTHER
}
