package org.hedgerow.web.review;

import java.util.List;
import java.util.OptionalInt;

/**
 * A contribution that can't be changed, or not by whoever looks at it.
 *
 * @param mine whether it is theirs
 * @param reviewable whether they may decide on it
 */
record ShownPage(
    String token,
    int id,
    int revision,
    ProposalView proposal,
    String state,
    String stateName,
    String author,
    Times made,
    OptionalInt edition,
    List<EventView> history,
    List<String> serves,
    boolean mine,
    boolean reviewable,
    String news,
    String problem) {
  boolean canBeTakenBack() {
    return mine && state.equals("submitted");
  }
}
