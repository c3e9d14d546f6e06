package org.hedgerow.web.security;

import java.time.Duration;
import org.hedgerow.accounts.DurationWords;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** A client asks for too much in too short a time; nothing was done. */
public final class TooFastException extends ProblemException {
  private static final long serialVersionUID = 1L;

  /**
   * @param what as in {@code pictures}
   * @param wait how long until it is possible again
   */
  TooFastException(String what, Duration wait) {
    super(
        Problem.of(
            ProblemType.TOO_MANY_ATTEMPTS,
            "These were too many %s in a short time. Try again in %s."
                .formatted(what, DurationWords.inWords(wait))));
  }
}
