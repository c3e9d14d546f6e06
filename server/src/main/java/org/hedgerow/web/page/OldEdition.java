package org.hedgerow.web.page;

import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;

/**
 * That a page shows an edition which isn't the newest.
 *
 * @param address of the same page in the newest
 */
public record OldEdition(int number, int newest, String address) {

  /** Empty if it is the newest. */
  public static Optional<OldEdition> of(Lexicon shown, Lexicon newest, String address) {
    return shown.edition() < newest.edition()
        ? Optional.of(new OldEdition(shown.edition(), newest.edition(), address))
        : Optional.empty();
  }
}
