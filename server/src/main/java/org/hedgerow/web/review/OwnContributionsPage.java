package org.hedgerow.web.review;

import java.util.List;

/**
 * What somebody has contributed.
 *
 * @param returned what waits for them, with the reviewer's comment
 * @param filters the states that can be chosen
 */
record OwnContributionsPage(
    String token,
    String news,
    List<ReturnedRow> returned,
    List<ContributionRow> drafts,
    List<ContributionRow> waiting,
    List<ContributionRow> decided,
    boolean everybodys,
    List<Option> filters,
    String about) {

  /** With what the reviewer said. */
  record ReturnedRow(ContributionRow row, String comment, String by) {}

  boolean isEmpty() {
    return returned.isEmpty() && drafts.isEmpty() && waiting.isEmpty() && decided.isEmpty();
  }

  boolean isFiltered() {
    return everybodys
        || !about.isEmpty()
        || filters.stream().anyMatch(each -> each.chosen() && !each.value().isEmpty());
  }
}
