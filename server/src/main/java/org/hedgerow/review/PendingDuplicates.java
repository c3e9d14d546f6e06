package org.hedgerow.review;

import static java.util.stream.Collectors.toSet;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What an author has sent before and nobody has decided on: sent again, it is kept only once. */
final class PendingDuplicates {
  private final Map<Content, Contribution> found = new HashMap<>();

  private PendingDuplicates(Collection<List<Contribution>> undecided) {
    undecided.forEach(list -> list.forEach(this::add));
  }

  /** To be asked for after {@link ContributionStore#lockAuthor} by whoever adds another. */
  static PendingDuplicates of(ReviewUnitOfWork unit, Person author, Collection<Content> contents) {
    Set<String> subjects =
        contents.stream().map(each -> each.proposal().subject()).collect(toSet());
    return new PendingDuplicates(
        unit.contributions().undecided(author.accountId(), subjects).values());
  }

  /** Of several that say the same, one that was submitted counts before drafts. */
  private void add(Contribution each) {
    found.merge(
        each.content(),
        each,
        (before, next) ->
            before.state() == ContributionState.DRAFT && next.state() != ContributionState.DRAFT
                ? next
                : before);
  }

  Optional<Contribution> saying(Content content) {
    return Optional.ofNullable(found.get(content));
  }
}
