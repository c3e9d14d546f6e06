package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DifferencesTest {
  @Test
  void namesOnlyWhatDiffers() {
    assertThat(
            Differences.between(
                List.of(new Fact("a", "1"), new Fact("b", "2"), new Fact("b", "3")),
                List.of(new Fact("a", "1"), new Fact("b", "2"), new Fact("c", "4"))))
        .containsExactly(new Difference("b", "2; 3", "2"), new Difference("c", "", "4"));
  }
}
