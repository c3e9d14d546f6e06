package org.hedgerow.sentences.compose;

import java.util.List;

/** Where somebody or something is likely to be. */
public record Whereabouts(Selection subject, List<PlacePhrase> places) {

  public Whereabouts {
    places = List.copyOf(places);
  }
}
