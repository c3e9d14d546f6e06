package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.review.Contribution;

/**
 * Some of the contributions, the newest first.
 *
 * @param next where the list goes on
 */
record ContributionListView(List<ContributionView> contributions, Optional<String> next) {

  /**
   * @param found one more than the limit, where there are more
   */
  static ContributionListView of(List<Contribution> found, int limit, ContributionAnswer answer) {
    KeysetPage<Contribution> page = KeysetPage.of(found, limit, Contribution::id);
    return new ContributionListView(answer.views(page.items()), page.next());
  }
}
