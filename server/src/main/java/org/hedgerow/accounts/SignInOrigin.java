package org.hedgerow.accounts;

import java.util.Optional;

/**
 * The origin of a sign-in attempt.
 *
 * @param address its network address
 * @param client what the browser says of itself
 * @param device what the browser was given when somebody signed in before
 */
public record SignInOrigin(String address, String client, Optional<Secret> device) {
  public static SignInOrigin of(String address, String client) {
    return new SignInOrigin(address, client, Optional.empty());
  }
}
