package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A contribution with all that helps to decide on it.
 *
 * @param changes what the bank would say otherwise
 * @param near words of the bank that are spelt like it
 * @param beside words that stand already in the list that it is for
 * @param errors because of which it can't be approved as the bank is now
 * @param place among those that wait, as in {@code 3 of 12}; empty if it doesn't wait
 * @param undo what was decided last, to be undone
 * @param problem what went wrong just now
 * @param comment typed so far
 */
record DecisionPage(
    String token,
    int id,
    int revision,
    ProposalView proposal,
    String state,
    String stateName,
    String author,
    Times since,
    OptionalInt edition,
    boolean mine,
    String verdict,
    String headline,
    List<FindingView> reasons,
    List<String> serves,
    List<Difference> changes,
    List<String> near,
    List<String> beside,
    String besideWhat,
    List<EventView> history,
    List<OtherView> others,
    List<String> errors,
    String place,
    OptionalInt before,
    OptionalInt next,
    Optional<Undo> undo,
    String news,
    String problem,
    String comment) {
  boolean waits() {
    return state.equals("submitted");
  }

  boolean canDecide() {
    return waits() && !mine;
  }

  boolean canBeReopened() {
    return !mine && (state.equals("returned") || state.equals("declined"));
  }

  boolean canBeWithdrawn() {
    return !mine && state.equals("approved");
  }
}
