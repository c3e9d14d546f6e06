package org.hedgerow.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

class RecentQueriesTest {
  private final RecentQueries<String> recent = new RecentQueries<>();
  private final List<String> again = new ArrayList<>();

  @Test
  void asksEachOnce() {
    recent.remember("oa");
    recent.remember("ee");
    recent.remember("sh");
    recent.remember("ee");
    recent.replay(again::add);
    assertThat(again).containsExactlyInAnyOrder("ee", "sh", "oa");
  }

  @Test
  void whatGoesWrongDoesNotKeepTheOthersFromBeingAsked() {
    recent.remember("oa");
    recent.remember("gone");
    recent.replay(
        question -> {
          again.add(question);
          if (question.equals("gone")) {
            throw new IllegalArgumentException("no such word");
          }
        });
    assertThat(again).containsExactlyInAnyOrder("gone", "oa");
  }

  @Test
  void givesUpWhatWouldTakeTooLong() {
    recent.remember("slow as well");
    recent.remember("slow");
    recent.replay(
        question -> {
          again.add(question);
          long end = System.nanoTime() + Duration.ofMillis(30).toNanos();
          while (System.nanoTime() < end) {
            LockSupport.parkNanos(end - System.nanoTime());
          }
        });
    assertThat(again).hasSize(1);
  }

  @Test
  void asksNothingWhereNothingWasAsked() {
    recent.replay(again::add);
    assertThat(again).isEmpty();
  }
}
