package org.hedgerow.sentences.compose;

/** How a clause uses its verb. */
public enum ClauseMode {
  /** The goat ran. */
  PAST,
  /** The goat runs. */
  PRESENT,
  /** The goat is running. */
  ING,
  /** The goat can run. */
  CAN,
  /** Run to the goat. */
  COMMAND,
  /** The goat wants to run. */
  WANT
}
