package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A way in which a verb is used: who does it, to what, and where.
 *
 * @param object what it is done to, if it is done to anything
 * @param smaller whether the object must be smaller than who does it
 * @param placeNeeded whether the verb does not make sense without a place
 * @param rests fixed endings: <em>up, well, in the sun</em>
 * @param restNeeded whether the verb does not make sense without one
 */
public record VerbFrame(
    Verb verb,
    Selection subject,
    Optional<Selection> object,
    boolean smaller,
    List<PlacePhrase> places,
    boolean placeNeeded,
    List<String> rests,
    boolean restNeeded,
    Set<ClauseMode> modes) {

  public VerbFrame {
    places = List.copyOf(places);
    rests = List.copyOf(rests);
    modes = Set.copyOf(modes);
  }
}
