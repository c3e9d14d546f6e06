package org.hedgerow.review;

import java.time.Instant;
import java.util.List;

/**
 * Something that waits for a decision, as much of it as its place in the queue depends on.
 *
 * @param id of the contribution
 * @param changed when it last changed
 * @param serves the phonogram values whose lists would gain by it, as in {@code oa 1}
 */
public record Pending(int id, int authorId, Instant changed, List<String> serves) {
  public Pending {
    serves = List.copyOf(serves);
  }
}
