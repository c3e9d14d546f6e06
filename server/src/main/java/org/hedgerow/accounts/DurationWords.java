package org.hedgerow.accounts;

import java.time.Duration;

/** Durations in words. */
public final class DurationWords {
  private DurationWords() {}

  /** Rounded up, as in “40 seconds” or “2 minutes”. */
  public static String inWords(Duration wait) {
    long seconds = Math.max(1, wait.plusMillis(999).toSeconds());
    if (seconds < 90) {
      return seconds == 1 ? "1 second" : seconds + " seconds";
    }
    return (seconds + 59) / 60 + " minutes";
  }
}
