package org.hedgerow.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PieceTest {

  @Test
  void takesAWordApart() {
    assertThat(Piece.of("boat", List.of(1, 2)))
        .containsExactly(
            new Piece("b", false, false),
            new Piece("oa", true, false),
            new Piece("t", false, false));
  }

  @Test
  void aSplitGraphemeIsTwoPieces() {
    assertThat(Piece.of("kite", List.of(1, 3)))
        .extracting(Piece::letters)
        .containsExactly("k", "i", "t", "e");
  }

  @Test
  void lettersOfTwoFindingsStayApart() {
    assertThat(Piece.of("teacher", List.of(1, 2), List.of(List.of(3, 4), List.of(5, 6))))
        .containsExactly(
            new Piece("t", false, false),
            new Piece("ea", true, false),
            new Piece("ch", false, true),
            new Piece("er", false, true));
  }
}
