package org.hedgerow.web.pages;

import java.util.Optional;

/** A list that a word fits. */
record Fit(String name, String address) {

  /**
   * @param edition as it stands in addresses
   */
  Fit in(Optional<String> edition) {
    return new Fit(name, ListAddress.inEdition(address, edition));
  }
}
