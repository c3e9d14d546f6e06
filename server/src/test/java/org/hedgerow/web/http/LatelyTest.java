package org.hedgerow.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;

class LatelyTest {
  private final Lately<String> lately = new Lately<>();
  private final List<String> again = new ArrayList<>();

  @Test
  void asksEachOnce() {
    lately.asked("oa");
    lately.asked("ee");
    lately.asked("sh");
    lately.asked("ee");
    lately.askAgain(again::add);
    assertThat(again).containsExactlyInAnyOrder("ee", "sh", "oa");
  }

  @Test
  void whatGoesWrongDoesNotKeepTheOthersFromBeingAsked() {
    lately.asked("oa");
    lately.asked("gone");
    lately.askAgain(
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
    lately.asked("slow as well");
    lately.asked("slow");
    lately.askAgain(
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
    lately.askAgain(again::add);
    assertThat(again).isEmpty();
  }
}
