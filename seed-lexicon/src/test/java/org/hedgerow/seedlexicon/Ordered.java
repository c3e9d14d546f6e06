package org.hedgerow.seedlexicon;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;

/** Tables stand in plain code-unit order, so that a change shows up as a change of few lines. */
final class Ordered {

  private Ordered() {}

  static void assertStrictly(List<String> keys) {
    assertThat(keys).isNotEmpty().isSortedAccordingTo(Comparator.naturalOrder());
    assertThat(keys).doesNotHaveDuplicates();
  }
}
