package org.hedgerow.lexicon;

import static java.util.stream.Collectors.groupingBy;

import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Correspondence;

/** The sentences of an edition. Immutable. */
public final class Sentences {
  public static final Sentences NONE = new Sentences(List.of());

  private final List<Sentence> all;
  private final Map<Correspondence, List<Sentence>> byValue;

  /**
   * @param all in the order in which they are given out
   */
  public Sentences(List<Sentence> all) {
    this.all = List.copyOf(all);
    this.byValue = this.all.stream().collect(groupingBy(Sentence::value));
  }

  public List<Sentence> all() {
    return all;
  }

  /** Those for a value that are right in an accent. */
  public List<Sentence> of(Correspondence value, String accent) {
    return byValue.getOrDefault(value, List.of()).stream()
        .filter(sentence -> sentence.accents().contains(accent))
        .toList();
  }
}
