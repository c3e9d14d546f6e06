package org.hedgerow.web.edge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Bounds the memory that bodies or answers take while clients are slow. Where there is no room
 * left, those give way that have been there the longest. Thread-safe.
 */
final class MemoryBudget {
  private static final int SHARE_OF_MEMORY = 8;

  private final long most;
  private final Map<Held, Long> held = new LinkedHashMap<>();
  private long taken;

  /** Something that takes memory while it waits for a client. */
  interface Held {
    /** Whether it waits for nobody any more. */
    boolean isComplete();

    /** Goes, so that others have room. */
    void giveWay();
  }

  /**
   * @param most in bytes
   */
  MemoryBudget(long most) {
    this.most = most;
  }

  /** A room that takes a share of the memory that the program may have. */
  static MemoryBudget shared() {
    return new MemoryBudget(Runtime.getRuntime().maxMemory() / SHARE_OF_MEMORY);
  }

  /** Takes so many bytes more; if others can't give way, the taker does. */
  void take(Held taker, int bytes) {
    add(taker, bytes).forEach(Held::giveWay);
  }

  private synchronized List<Held> add(Held taker, int bytes) {
    held.merge(taker, (long) bytes, Long::sum);
    taken += bytes;
    List<Held> givingWay = new ArrayList<>();
    for (Held oldest : List.copyOf(held.keySet())) {
      if (taken <= most) {
        break;
      }
      if (!oldest.isComplete()) {
        givingWay.add(oldest);
        release(oldest);
      }
    }
    return givingWay;
  }

  synchronized void release(Held done) {
    Long bytes = held.remove(done);
    taken -= bytes == null ? 0 : bytes;
  }

  synchronized long taken() {
    return taken;
  }
}
