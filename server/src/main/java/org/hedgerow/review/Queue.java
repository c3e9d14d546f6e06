package org.hedgerow.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.Role;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Needs;
import org.hedgerow.phonics.Correspondence;

/**
 * What waits for a decision, the most wanted first: by the phonogram value, among those that it
 * serves, of which most is lacking; then by how long it has waited.
 */
public final class Queue {
  /** Of more than these, the first begun wait for others to be decided on. */
  private static final int MOST = 20_000;

  private final Workroom room;
  private volatile Ranks last = new Ranks(0, Map.of());

  /**
   * The places of the values in the order of need, which only a new edition changes.
   *
   * @param places by the labels of the values
   */
  private record Ranks(int edition, Map<String, Integer> places) {}

  Queue(Workroom room) {
    this.room = room;
  }

  /**
   * Something that waits.
   *
   * @param value the most needed of the phonogram values that it serves, as in {@code oa 1}; or an
   *     empty text
   * @param rank of that value's need, from 0, the greatest; last for what serves none
   * @param own whether it is the reviewer's, who may not decide on it
   */
  public record Waiting(Contribution contribution, String value, int rank, boolean own) {}

  /**
   * @param query which of those that wait; its states don't count
   */
  public List<Waiting> waiting(Actor actor, ContributionQuery query) {
    actor.require(Role.REVIEWER);
    List<Contribution> submitted =
        room.inTransaction(
            page ->
                page.contributions()
                    .find(query.in(Set.of(State.SUBMITTED)).forViewer(actor).upTo(MOST)));
    Map<String, Integer> ranks = submitted.isEmpty() ? Map.of() : ranks(room.newest().get());
    List<Waiting> waiting = new ArrayList<>();
    for (Contribution each : submitted) {
      waiting.add(waiting(each, ranks, actor));
    }
    waiting.sort(
        Comparator.comparingInt(Waiting::rank)
            .thenComparing(each -> each.contribution().changed())
            .thenComparing(each -> each.contribution().id()));
    return waiting.stream().limit(query.limit()).toList();
  }

  private static Waiting waiting(
      Contribution contribution, Map<String, Integer> ranks, Actor actor) {
    int best = ranks.size();
    String value = "";
    for (String served : contribution.serves()) {
      int rank = ranks.getOrDefault(served, ranks.size());
      if (rank < best || value.isEmpty()) {
        best = rank;
        value = served;
      }
    }
    return new Waiting(contribution, value, best, actor.is(contribution.author().accountId()));
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
