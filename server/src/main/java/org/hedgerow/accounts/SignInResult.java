package org.hedgerow.accounts;

import java.time.Duration;

/** What came of an attempt to sign in. */
public sealed interface SignInResult {
  /**
   * @param session to be kept by the browser
   */
  record SignedIn(Account account, Secret session) implements SignInResult {}

  /** No such account, not this password, or not active: nobody is told which. */
  record Wrong() implements SignInResult {}

  /**
   * After too many attempts.
   *
   * @param delay how long to wait
   */
  record TooEarly(Duration delay) implements SignInResult {}
}
