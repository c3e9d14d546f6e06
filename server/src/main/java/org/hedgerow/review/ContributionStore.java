package org.hedgerow.review;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Contributions, within a transaction. */
public interface ContributionStore {
  /** A new draft. */
  Contribution add(Content content, Person author, Instant now);

  Optional<Contribution> find(int id);

  /** As {@link #find}, and nobody else changes it before this transaction ends. */
  Optional<Contribution> lock(int id);

  /** Writes down all of it that can change. */
  void save(Contribution contribution);

  /** Deletes a draft, for good. */
  void remove(int id);

  /** In the order of the query, as many as it wants. */
  List<Contribution> find(ContributionQuery query);

  /** As {@link #find(ContributionQuery)}, without what they say. */
  default List<Pending> pending(ContributionQuery query) {
    return find(query).stream().map(Contribution::pending).toList();
  }

  /** Those that there are, in this order. */
  default List<Contribution> find(List<Integer> ids) {
    return ids.stream().flatMap(id -> find(id).stream()).toList();
  }

  /**
   * Those that wait for a decision, by the word or sentence that they are about, the oldest first.
   *
   * @return without an entry where none waits
   */
  Map<String, List<Contribution>> waitingAbout(Set<String> subjects);

  /**
   * Those of an author that nobody has decided on, drafts among them, by what they are about, the
   * oldest first.
   */
  Map<String, List<Contribution>> undecided(int authorId, Set<String> subjects);

  /** Until this transaction ends, no other that asks for it adds a contribution of the author. */
  void lockAuthor(int authorId);

  /** Those that wait for a decision and are about the same word or sentence, the oldest first. */
  default List<Contribution> waitingAbout(String subject) {
    return waitingAbout(Set.of(subject)).getOrDefault(subject, List.of());
  }
}
