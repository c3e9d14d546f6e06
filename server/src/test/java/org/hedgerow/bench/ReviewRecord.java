package org.hedgerow.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

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
  final Times writes = new Times();
  final Times queues = new Times();
  final Times decisions = new Times();
  final Times lag = new Times();
  final AtomicInteger refused = new AtomicInteger();
  final AtomicInteger conflicts = new AtomicInteger();
}
