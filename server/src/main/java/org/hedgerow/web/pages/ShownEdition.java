package org.hedgerow.web.pages;

import java.util.Optional;

/**
 * The edition that a page shows.
 *
 * @param named as it stands in addresses; empty where the newest is meant
 * @param old that it isn't the newest
 */
record ShownEdition(Optional<String> named, Optional<OldEdition> old) {

  /** An address in it. */
  String in(String address) {
    return ListAddress.inEdition(address, named);
  }
}
