package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.hedgerow.review.ContributionFinding;

/**
 * What the machine found.
 *
 * @param accent left out where it is about the word in any accent
 */
record ContributionFindingView(
    String code,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) String accent,
    List<Integer> letters,
    String message) {
  static ContributionFindingView of(ContributionFinding remark) {
    return new ContributionFindingView(
        remark.code(), remark.accent(), remark.letters(), remark.message());
  }

  static List<ContributionFindingView> all(List<ContributionFinding> remarks) {
    return remarks.stream().map(ContributionFindingView::of).toList();
  }
}
