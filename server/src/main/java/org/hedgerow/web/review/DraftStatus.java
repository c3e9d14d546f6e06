package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Decision;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.Reviews.Dossier;

/**
 * How far a contribution has come that is being written.
 *
 * @param returned by whom it was returned, and why
 * @param elsewhere what differs from what was saved elsewhere meanwhile
 * @param news what was just done
 */
record DraftStatus(
    DraftReference draft,
    boolean discardable,
    Optional<Decision> returned,
    List<Difference> elsewhere,
    String news) {

  /** Before anything has been kept. */
  static final DraftStatus NEW =
      new DraftStatus(DraftReference.NONE, true, Optional.empty(), List.of(), "");

  static DraftStatus of(Dossier dossier, List<Difference> elsewhere, String news) {
    return new DraftStatus(
        DraftReference.of(dossier.contribution()),
        dossier.contribution().state() == ContributionState.DRAFT && dossier.decisions().isEmpty(),
        lastReturn(dossier),
        elsewhere,
        news);
  }

  private static Optional<Decision> lastReturn(Dossier dossier) {
    return dossier.contribution().state() != ContributionState.RETURNED
        ? Optional.empty()
        : dossier.decisions().stream()
            .filter(each -> each.kind() == DecisionKind.RETURN)
            .reduce((first, second) -> second);
  }
}
