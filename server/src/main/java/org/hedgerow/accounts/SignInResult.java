package org.hedgerow.accounts;

import java.time.Duration;
import org.hedgerow.operations.Account;

/** What came of an attempt to sign in. */
public sealed interface SignInResult {
  /** How long a device stays known. */
  Duration DEVICE_KNOWN_FOR = Devices.KNOWN_FOR;

  /**
   * @param session to be kept by the browser
   * @param device to be kept by the browser for {@link #DEVICE_KNOWN_FOR}, and shown when somebody
   *     signs in again
   */
  record SignedIn(Account account, Secret session, Secret device) implements SignInResult {}

  /** No such account, not this password, or not active: nobody is told which. */
  record Wrong() implements SignInResult {}

  /**
   * After too many attempts.
   *
   * @param delay how long to wait
   */
  record TooEarly(Duration delay) implements SignInResult {}
}
