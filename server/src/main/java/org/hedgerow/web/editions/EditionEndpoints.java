package org.hedgerow.web.editions;

import java.util.List;
import org.hedgerow.web.http.Endpoints;

/** What programs may ask about the editions of the bank. */
public final class EditionEndpoints {
  private EditionEndpoints() {}

  public static void enter(Endpoints endpoints) {
    EditionReads reads = new EditionReads(endpoints.editions());
    endpoints.log(EditionReads.LIST, EditionReads.PARAMETERS, reads::list);
    endpoints.log(EditionReads.ONE, List.of(), reads::one);
    endpoints.log(EditionReads.CHANGES, EditionReads.PARAMETERS, reads::changes);
  }
}
