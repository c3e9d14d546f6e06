package org.hedgerow.accounts;

import java.util.Optional;

/**
 * Where an attempt to sign in comes from.
 *
 * @param address its network address
 * @param client what the browser says of itself
 * @param device what the browser was given when somebody signed in before
 */
public record Visit(String address, String client, Optional<Secret> device) {
  public static Visit of(String address, String client) {
    return new Visit(address, client, Optional.empty());
  }
}
