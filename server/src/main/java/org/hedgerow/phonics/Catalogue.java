package org.hedgerow.phonics;

import static java.util.stream.Collectors.groupingBy;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All correspondences of English spelling, in the order of the table a teacher reads; the id of a
 * correspondence is its place in the list.
 */
public final class Catalogue {

  private final List<Correspondence> correspondences;
  private final Map<String, List<Correspondence>> taught;

  /**
   * @throws IllegalArgumentException if an id is not the row's place, or a value number comes twice
   */
  public Catalogue(List<Correspondence> correspondences) {
    this.correspondences = List.copyOf(correspondences);
    for (int i = 0; i < correspondences.size(); i++) {
      if (correspondences.get(i).id() != i) {
        throw new IllegalArgumentException("row " + i + " has id " + correspondences.get(i).id());
      }
    }
    this.taught =
        correspondences.stream()
            .filter(Correspondence::isTaught)
            .sorted(Comparator.comparingInt(each -> each.value().orElseThrow()))
            .collect(
                groupingBy(
                    each -> each.grapheme().text(),
                    TreeMap::new,
                    java.util.stream.Collectors.toUnmodifiableList()));
    taught.forEach(Catalogue::requireNumbered);
  }

  private static void requireNumbered(String grapheme, List<Correspondence> values) {
    for (int i = 0; i < values.size(); i++) {
      if (values.get(i).value().orElseThrow() != i + 1) {
        throw new IllegalArgumentException(
            "the values of " + grapheme + " must be numbered 1 to " + values.size());
      }
    }
  }

  public List<Correspondence> correspondences() {
    return correspondences;
  }

  public int size() {
    return correspondences.size();
  }

  public Correspondence get(int id) {
    return correspondences.get(id);
  }

  /** The graphemes that have numbered values, in alphabetical order. */
  public List<String> phonograms() {
    return List.copyOf(taught.keySet());
  }

  /** The numbered values of a grapheme, in their order; empty if it is no phonogram. */
  public List<Correspondence> values(String grapheme) {
    return taught.getOrDefault(grapheme, List.of());
  }

  /** The value of a grapheme with this number. */
  public Optional<Correspondence> value(String grapheme, int number) {
    return values(grapheme).stream()
        .filter(each -> each.value().orElseThrow() == number)
        .findFirst();
  }
}
