package org.hedgerow.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What the server has acknowledged. */
final class ReviewRecord {
  /**
   * @param contributor who wrote it
   * @param revision of the contribution as it was acknowledged last
   */
  record Written(int contributor, String spelling, int revision, String state) {}

  /**
   * @param edition that was published; 0 for none
   */
  record Decided(String spelling, String decision, String state, int edition) {}

  final Map<Integer, Written> written = new ConcurrentHashMap<>();
  final Map<Integer, Decided> decided = new ConcurrentHashMap<>();
  private volatile ReviewTimes times = new ReviewTimes();

  /** Those of the stretch of load that runs. */
  ReviewTimes times() {
    return times;
  }

  void measureAnew() {
    times = new ReviewTimes();
  }
}
