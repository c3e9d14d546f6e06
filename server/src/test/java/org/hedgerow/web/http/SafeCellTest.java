package org.hedgerow.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that a spreadsheet would take for formulas. */
class SafeCellTest {

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\t=1", "\r=1"})
  void marksWhatBeginsLikeAFormula(String text) {
    assertThat(SafeCell.of(text)).isEqualTo("'" + text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "boat", "b oʊ t", "i-e", "a=b"})
  void leavesTheRestAlone(String text) {
    assertThat(SafeCell.of(text)).isEqualTo(text);
  }
}
