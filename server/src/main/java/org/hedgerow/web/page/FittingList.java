package org.hedgerow.web.page;

import java.util.Optional;

/** A list that a word fits. */
public record FittingList(String name, String address) {

  /**
   * @param edition as it stands in addresses
   */
  public FittingList in(Optional<String> edition) {
    return new FittingList(name, ListAddress.inEdition(address, edition));
  }
}
