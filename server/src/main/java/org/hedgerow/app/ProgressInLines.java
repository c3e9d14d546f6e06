package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.concurrent.atomic.AtomicLong;

/** A line for every tenth of the work, for logs and files. */
final class ProgressInLines implements Progress {
  private final String work;
  private final long steps;
  private final PrintWriter out;
  private final AtomicLong done = new AtomicLong();

  ProgressInLines(String work, long steps, PrintWriter out) {
    this.work = work;
    this.steps = steps;
    this.out = out;
  }

  @Override
  public void step() {
    long now = done.incrementAndGet();
    if (tenths(now) > tenths(now - 1)) {
      out.println("%s: %d %%".formatted(work, tenths(now) * 10));
    }
  }

  private long tenths(long count) {
    return count * 10 / steps;
  }

  @Override
  public void close() {}
}
