package org.hedgerow.review;

import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.toMap;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Needs;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.phonics.Correspondence;

/**
 * What waits for a decision, the most wanted first: by the phonogram value, among those that it
 * serves, of which most is lacking; then by how long it has waited.
 */
public final class Queue {
  /** Of more than these, the first begun wait for others to be decided on. */
  private static final int MAX = 20_000;

  private final ReviewContext context;
  private volatile Ranks last = new Ranks(0, Map.of());

  /**
   * The places of the values in the order of need, which only a new edition changes.
   *
   * @param places by the labels of the values
   */
  private record Ranks(int edition, Map<String, Integer> places) {}

  Queue(ReviewContext context) {
    this.context = context;
  }

  /**
   * The place of something that waits.
   *
   * @param id of the contribution
   * @param value the most needed of the phonogram values that it serves, as in {@code oa 1}; or an
   *     empty text
   * @param rank of that value's need, from 0, the greatest; last for what serves none
   * @param changed when it last changed
   * @param own whether it is the reviewer's, who may not decide on it
   */
  public record Place(int id, String value, int rank, Instant changed, boolean own)
      implements Comparable<Place> {

    /** As they stand in the queue; thousands are compared for each page of it. */
    @Override
    public int compareTo(Place other) {
      int byNeed = Integer.compare(rank, other.rank);
      int byTime = byNeed == 0 ? changed.compareTo(other.changed) : byNeed;
      return byTime == 0 ? Integer.compare(id, other.id) : byTime;
    }
  }

  /** Something that waits, and where. */
  public record Waiting(Contribution contribution, Place place) {}

  /**
   * All that waits, without what it says: that is only read of those that are shown.
   *
   * @param query which of those that wait; its states don't count
   */
  public List<Place> places(Actor actor, ContributionQuery query) {
    actor.require(Role.REVIEWER);
    List<Pending> pending =
        context.reading(
            page ->
                page.contributions()
                    .pending(
                        query.in(Set.of(ContributionState.SUBMITTED)).forViewer(actor).upTo(MAX)));
    Map<String, Integer> ranks = pending.isEmpty() ? Map.of() : ranks(context.newest().get());
    return pending.stream()
        .map(each -> place(each, ranks, actor))
        .sorted()
        .limit(query.limit())
        .toList();
  }

  private static Place place(Pending pending, Map<String, Integer> ranks, Actor actor) {
    int best = ranks.size();
    String value = "";
    for (String served : pending.serves()) {
      int rank = ranks.getOrDefault(served, ranks.size());
      if (rank < best || value.isEmpty()) {
        best = rank;
        value = served;
      }
    }
    return new Place(pending.id(), value, best, pending.changed(), actor.is(pending.authorId()));
  }

  /** What stands at some places; without what was decided meanwhile. */
  public List<Waiting> at(Actor actor, List<Place> places) {
    actor.require(Role.REVIEWER);
    Map<Integer, Contribution> found =
        context.reading(page -> page.contributions().find(ids(places))).stream()
            .filter(each -> each.state() == ContributionState.SUBMITTED)
            .collect(toMap(Contribution::id, each -> each));
    return places.stream()
        .filter(place -> found.containsKey(place.id()))
        .map(place -> new Waiting(requireNonNull(found.get(place.id())), place))
        .toList();
  }

  private static List<Integer> ids(List<Place> places) {
    return places.stream().map(Place::id).toList();
  }

  /** A value's place among the needs of the accent that is meant where none is named. */
  private Map<String, Integer> ranks(Lexicon lexicon) {
    Ranks known = last;
    if (known.edition() != lexicon.edition()) {
      known = new Ranks(lexicon.edition(), places(lexicon));
      last = known;
    }
    return known.places();
  }

  private static Map<String, Integer> places(Lexicon lexicon) {
    Map<String, Integer> places = new HashMap<>();
    String accent = lexicon.accents().get(0).accent().tag();
    for (Correspondence value : Needs.order(lexicon, accent)) {
      places.putIfAbsent(value.label(), places.size());
    }
    return places;
  }
}
