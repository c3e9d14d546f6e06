package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.hedgerow.review.Contribution;

/**
 * Some of the contributions, the newest first.
 *
 * @param next where the list goes on
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record ContributionListView(List<ContributionView> contributions, Optional<String> next) {

  /**
   * @param found one more than the limit, where there are more
   */
  static ContributionListView of(List<Contribution> found, int limit, ContributionAnswer answer) {
    List<Contribution> shown = found.subList(0, Math.min(limit, found.size()));
    Optional<String> next =
        found.size() > limit
            ? Optional.of(String.valueOf(shown.get(limit - 1).id()))
            : Optional.empty();
    return new ContributionListView(answer.views(shown), next);
  }
}
