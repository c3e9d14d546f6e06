package org.hedgerow.web.page;

import java.util.Optional;

/** A list that a word fits. */
public record Fit(String name, String address) {

  /**
   * @param edition as it stands in addresses
   */
  public Fit in(Optional<String> edition) {
    return new Fit(name, ListAddress.inEdition(address, edition));
  }
}
