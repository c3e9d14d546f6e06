package org.hedgerow.web.edge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Who gives way when clients are slow and memory runs short. */
class MemoryBudgetTest {
  private final MemoryBudget room = new MemoryBudget(100);

  private static final class Slow implements MemoryBudget.Held {
    private boolean complete;
    private boolean gone;

    @Override
    public boolean isComplete() {
      return complete;
    }

    @Override
    public void giveWay() {
      gone = true;
    }
  }

  @Test
  void theOldestGivesWayFirst() {
    Slow oldest = new Slow();
    Slow middle = new Slow();
    Slow newest = new Slow();
    room.take(oldest, 40);
    room.take(middle, 40);
    room.take(newest, 40);
    assertThat(oldest.gone).isTrue();
    assertThat(middle.gone).isFalse();
    assertThat(newest.gone).isFalse();
    assertThat(room.taken()).isEqualTo(80);
  }

  @Test
  void whatIsReleasedMakesRoom() {
    Slow first = new Slow();
    Slow second = new Slow();
    room.take(first, 90);
    room.release(first);
    room.take(second, 90);
    assertThat(first.gone || second.gone).isFalse();
    assertThat(room.taken()).isEqualTo(90);
  }

  @Test
  void whoIsCompleteStaysAndTheTakerGoes() {
    Slow whole = new Slow();
    room.take(whole, 90);
    whole.complete = true;
    Slow next = new Slow();
    room.take(next, 20);
    assertThat(whole.gone).isFalse();
    assertThat(next.gone).isTrue();
    assertThat(room.taken()).isEqualTo(90);
  }
}
