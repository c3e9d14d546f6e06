package org.hedgerow.bench;

import java.util.concurrent.atomic.AtomicInteger;

/** What was measured of one stretch of load. */
final class ReviewTimes {
  final Times writes = new Times();
  final Times queues = new Times();
  final Times decisions = new Times();
  final Times lag = new Times();
  final AtomicInteger refused = new AtomicInteger();
  final AtomicInteger conflicts = new AtomicInteger();
}
