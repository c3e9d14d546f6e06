package org.hedgerow.faults;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What was acknowledged. Thread-safe. */
final class Ledger {
  /**
   * @param submitted whether its submission was acknowledged too
   */
  record Written(int contributor, String spelling, boolean submitted) {}

  /**
   * @param edition that was published; 0 for none
   */
  record Decided(String decision, int edition) {}

  private final Map<Integer, Written> written = new ConcurrentHashMap<>();
  private final Map<Integer, Decided> decided = new ConcurrentHashMap<>();

  void written(int contribution, Written what) {
    written.put(contribution, what);
  }

  void decided(int contribution, Decided what) {
    decided.put(contribution, what);
  }

  Map<Integer, Written> written() {
    return Map.copyOf(written);
  }

  Map<Integer, Decided> decided() {
    return Map.copyOf(decided);
  }

  long size() {
    return written.size()
        + written.values().stream().filter(Written::submitted).count()
        + decided.size();
  }
}
