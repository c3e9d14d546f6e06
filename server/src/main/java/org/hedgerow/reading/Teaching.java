package org.hedgerow.reading;

import java.util.List;

/** What centres choose from: reading rules, and orders in which phonograms are taught. */
public record Teaching(RuleSets rules, List<Sequence> sequences) {

  /** Where nobody has said anything. */
  public static final Teaching NONE = new Teaching(RuleSets.USUAL_ONLY, List.of());

  public Teaching {
    sequences = List.copyOf(sequences);
    if (sequences.stream().map(Sequence::name).distinct().count() < sequences.size()) {
      throw new IllegalArgumentException("two sequences have one name");
    }
  }
}
