package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NeighboursTest {
  @Test
  void knowsItsPlace() {
    Neighbours middle = new Neighbours(List.of(7, 3, 9), 3);
    assertThat(middle.before()).hasValue(7);
    assertThat(middle.next()).hasValue(9);
    assertThat(middle.place()).isEqualTo("2 of 3");
  }

  @Test
  void afterTheLastComesTheFirstThatIsLeft() {
    assertThat(new Neighbours(List.of(7, 3, 9), 9).next()).hasValue(7);
    assertThat(new Neighbours(List.of(9), 9).next()).isEmpty();
  }

  @Test
  void whatDoesntWaitHasNoPlace() {
    Neighbours decided = new Neighbours(List.of(7), 4);
    assertThat(decided.place()).isEmpty();
    assertThat(decided.before()).isEmpty();
    assertThat(decided.next()).hasValue(7);
  }
}
