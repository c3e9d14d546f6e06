package org.hedgerow.web.review;

import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.review.Queue.Place;

/**
 * Where something stands among those that a reviewer may decide on.
 *
 * @param ids in the order of the queue
 */
record Neighbours(List<Integer> ids, int id) {
  static Neighbours of(List<Place> queue, int id) {
    return new Neighbours(queue.stream().filter(each -> !each.own()).map(Place::id).toList(), id);
  }

  OptionalInt before() {
    int at = ids.indexOf(id);
    return at > 0 ? OptionalInt.of(ids.get(at - 1)) : OptionalInt.empty();
  }

  /** The one after it; the first of those that are left where it was the last. */
  OptionalInt next() {
    int at = ids.indexOf(id);
    if (at + 1 < ids.size()) {
      return OptionalInt.of(ids.get(at + 1));
    }
    return ids.stream().filter(each -> each != id).mapToInt(each -> each).findFirst();
  }

  /** As in {@code 3 of 12}; empty if it doesn't wait. */
  String place() {
    int at = ids.indexOf(id);
    return at < 0 ? "" : "%d of %d".formatted(at + 1, ids.size());
  }
}
