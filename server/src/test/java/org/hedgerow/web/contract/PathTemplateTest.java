package org.hedgerow.web.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import org.junit.jupiter.api.Test;

class PathTemplateTest {
  private static final PathTemplate TEMPLATE = PathTemplate.of("/a.b/{first}/c/{second}");

  @Test
  void readsTheParameters() {
    assertThat(TEMPLATE.values("/a.b/o%CA%8A/c/x+y%20z"))
        .containsExactly(entry("first", "oʊ"), entry("second", "x+y z"));
  }

  @Test
  void fitsWholePathsOnly() {
    assertThat(TEMPLATE.matches("/a.b/1/c/2")).isTrue();
    assertThat(TEMPLATE.matches("/a.b/1/c/2/")).isFalse();
    assertThat(TEMPLATE.matches("/a.b//c/2")).isFalse();
    assertThat(TEMPLATE.matches("/aXb/1/c/2")).isFalse();
    assertThat(TEMPLATE.matches("/x/a.b/1/c/2")).isFalse();
  }
}
