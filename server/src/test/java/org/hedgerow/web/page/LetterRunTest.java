package org.hedgerow.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LetterRunTest {

  @Test
  void takesAWordApart() {
    assertThat(LetterRun.of("boat", List.of(1, 2)))
        .containsExactly(
            new LetterRun("b", false, false),
            new LetterRun("oa", true, false),
            new LetterRun("t", false, false));
  }

  @Test
  void aSplitGraphemeIsTwoPieces() {
    assertThat(LetterRun.of("kite", List.of(1, 3)))
        .extracting(LetterRun::letters)
        .containsExactly("k", "i", "t", "e");
  }

  @Test
  void lettersOfTwoFindingsStayApart() {
    assertThat(LetterRun.of("teacher", List.of(1, 2), List.of(List.of(3, 4), List.of(5, 6))))
        .containsExactly(
            new LetterRun("t", false, false),
            new LetterRun("ea", true, false),
            new LetterRun("ch", false, true),
            new LetterRun("er", false, true));
  }
}
