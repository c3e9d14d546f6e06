package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class StuckWriteMonitorTest {
  private final AtomicLong time = new AtomicLong();
  private final StuckWriteMonitor writes = new StuckWriteMonitor(time::get);

  private boolean isStuckAfter(Duration more) {
    time.addAndGet(more.toNanos());
    return writes.isStuck();
  }

  @Test
  void noticesAWriteThatDoesNotEndBesideOthersThatDo() {
    assertThat(isStuckAfter(Duration.ofHours(1))).isFalse();
    writes.over(
        () -> {
          assertThat(isStuckAfter(Duration.ofSeconds(29))).isFalse();
          writes.over(() -> "another");
          assertThat(isStuckAfter(Duration.ofSeconds(2))).isTrue();
          return "ended after all";
        });
    assertThat(writes.isStuck()).isFalse();
  }

  @Test
  void aWriteThatFailsHasEnded() {
    assertThatThrownBy(
            () ->
                writes.over(
                    () -> {
                      throw new IllegalStateException("refused");
                    }))
        .hasMessage("refused");
    assertThat(isStuckAfter(Duration.ofHours(1))).isFalse();
  }
}
