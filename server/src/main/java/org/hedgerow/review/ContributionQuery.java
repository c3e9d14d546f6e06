package org.hedgerow.review;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;

/**
 * Which contributions somebody wants to see, the last begun first.
 *
 * @param states in one of these; all if empty
 * @param kind of this kind only
 * @param authorId only by whoever has this account
 * @param serves only those that serve this phonogram value, as in {@code oa 1}
 * @param about only about this word or sentence
 * @param before with a lower id than this
 * @param viewerId whose drafts may be seen; nobody sees another's
 * @param limit how many at most
 */
public record ContributionQuery(
    Set<ContributionState> states,
    Optional<ContributionKind> kind,
    OptionalInt authorId,
    Optional<String> serves,
    Optional<String> about,
    OptionalInt before,
    int viewerId,
    int limit) {
  public static final int MAX = 1000;

  public ContributionQuery {
    states = Set.copyOf(states);
    serves = serves.map(Given::text);
    about = about.map(Given::text);
  }

  /** All that an account may see, up to a number. */
  public static ContributionQuery seenBy(int viewerId, int limit) {
    return new ContributionQuery(
        Set.of(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        viewerId,
        limit);
  }

  /** Whatever was asked for, as this actor may see it. */
  ContributionQuery forViewer(Actor actor) {
    return new ContributionQuery(
        states,
        kind,
        authorId,
        serves,
        about,
        before,
        actor.account().map(Account::id).orElse(0),
        limit);
  }

  ContributionQuery upTo(int most) {
    return new ContributionQuery(states, kind, authorId, serves, about, before, viewerId, most);
  }

  public ContributionQuery in(Set<ContributionState> wanted) {
    return new ContributionQuery(wanted, kind, authorId, serves, about, before, viewerId, limit);
  }

  public ContributionQuery by(int wantedAuthor) {
    return new ContributionQuery(
        states, kind, OptionalInt.of(wantedAuthor), serves, about, before, viewerId, limit);
  }

  public ContributionQuery about(String subject) {
    return new ContributionQuery(
        states, kind, authorId, serves, Optional.of(subject), before, viewerId, limit);
  }
}
