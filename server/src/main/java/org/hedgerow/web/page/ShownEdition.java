package org.hedgerow.web.page;

import java.util.Optional;

/**
 * The edition that a page shows.
 *
 * @param named as it stands in addresses; empty where the newest is meant
 * @param old that it isn't the newest
 */
public record ShownEdition(Optional<String> named, Optional<OldEdition> old) {

  /** An address in it. */
  public String in(String address) {
    return ListAddress.inEdition(address, named);
  }
}
