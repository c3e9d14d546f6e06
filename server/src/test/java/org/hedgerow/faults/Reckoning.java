package org.hedgerow.faults;

import java.util.List;
import java.util.stream.Stream;

/**
 * What the bank holds, against what it acknowledged.
 *
 * @param halfDone contributions, decisions and editions that don't agree, in words
 */
record Reckoning(
    long acknowledged, List<String> lost, List<String> doubled, List<String> halfDone) {
  static final Reckoning NOTHING = new Reckoning(0, List.of(), List.of(), List.of());

  /** All that is wrong here and elsewhere; of each kind at most five. */
  List<String> and(List<String> others) {
    return Stream.of(lost, doubled, halfDone, others)
        .flatMap(each -> each.stream().limit(5))
        .toList();
  }
}
