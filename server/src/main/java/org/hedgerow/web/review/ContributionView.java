package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.review.Contribution;
import org.hedgerow.web.problems.ParameterError;

/**
 * What somebody contributed.
 *
 * @param edition in which it was published
 * @param decisions the oldest first; left out in lists, as what follows
 * @param others that wait for a decision about the same
 * @param errors because of which it can't be submitted or approved
 */
record ContributionView(
    int id,
    String state,
    int revision,
    String summary,
    JsonNode proposal,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String wantedFor,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String note,
    AuthorView author,
    Instant made,
    Instant changed,
    Optional<Instant> submitted,
    List<String> serves,
    List<ContributionFindingView> findings,
    OptionalInt edition,
    Optional<List<DecisionView>> decisions,
    Optional<List<ContributionView>> others,
    @JsonProperty("faults") Optional<List<ParameterError>> errors) {

  /** As it stands in lists. */
  static ContributionView of(Contribution contribution, JsonNode proposal) {
    return of(contribution, proposal, Optional.empty(), Optional.empty(), Optional.empty());
  }

  static ContributionView of(
      Contribution contribution,
      JsonNode proposal,
      Optional<List<DecisionView>> decisions,
      Optional<List<ContributionView>> others,
      Optional<List<ParameterError>> errors) {
    return new ContributionView(
        contribution.id(),
        contribution.state().label(),
        contribution.revision(),
        contribution.proposal().summary(),
        proposal,
        contribution.content().wantedFor(),
        contribution.content().note(),
        AuthorView.of(contribution.author()),
        contribution.made(),
        contribution.changed(),
        contribution.submitted(),
        contribution.serves(),
        ContributionFindingView.all(contribution.remarks()),
        contribution.edition(),
        decisions,
        others,
        errors);
  }
}
