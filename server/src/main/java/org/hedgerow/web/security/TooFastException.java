package org.hedgerow.web.security;

import java.time.Duration;
import org.hedgerow.accounts.Waits;

/** An account asks for too much in too short a time; nothing was done. */
public final class TooFastException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param what as in {@code pictures}
   * @param wait how long until it is possible again
   */
  TooFastException(String what, Duration wait) {
    super(
        "That were too many %s in a short time. Try again in %s."
            .formatted(what, Waits.inWords(wait)));
  }
}
