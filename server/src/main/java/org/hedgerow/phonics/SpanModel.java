package org.hedgerow.phonics;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How likely a realisation is after two others: an interpolated trigram model over the spans of
 * aligned words, a joint sequence model [1]. Histories that were seen seldom lean on shorter ones.
 *
 * <p>[1] M. Bisani and H. Ney, "Joint-Sequence Models for Grapheme-to-Phoneme Conversion", Speech
 * Communication 50, 2008.
 */
final class SpanModel {

  /** How many times the shorter history counts beside the longer one. */
  private static final double LEAN = 3;

  private static final int BITS = 10;

  private final int size;
  private final Map<Integer, Integer> sequences = new HashMap<>();
  private final Map<Integer, Integer> histories = new HashMap<>();
  private final int[] singles;
  private int total;

  /**
   * @param realisations how many there are; fewer than 1,000
   */
  SpanModel(int realisations) {
    if (realisations + 2 >= 1 << BITS) {
      throw new IllegalArgumentException("too many realisations: " + realisations);
    }
    this.size = realisations;
    this.singles = new int[realisations + 2];
  }

  /** What stands before the first span. */
  int start() {
    return size;
  }

  /** What stands after the last span. */
  int end() {
    return size + 1;
  }

  /** Learns from one aligned word. */
  void add(List<Span> spans) {
    int before = start();
    int last = start();
    for (Span span : spans) {
      int next = span.realisation().id();
      count(before, last, next);
      before = last;
      last = next;
    }
    count(before, last, end());
  }

  private void count(int before, int last, int next) {
    singles[next]++;
    total++;
    sequences.merge(triple(before, last, next), 1, Integer::sum);
    histories.merge(triple(0, before, last), 1, Integer::sum);
    sequences.merge(pair(last, next), 1, Integer::sum);
    histories.merge(pair(0, last), 1, Integer::sum);
  }

  /** Minus the natural logarithm of the probability. */
  double cost(int before, int last, int next) {
    double single = (singles[next] + 0.1) / (total + 0.1 * singles.length);
    double afterOne = lean(pair(last, next), pair(0, last), single);
    return -Math.log(lean(triple(before, last, next), triple(0, before, last), afterOne));
  }

  private double lean(int sequence, int history, double shorter) {
    double seen = sequences.getOrDefault(sequence, 0);
    return (seen + LEAN * shorter) / (histories.getOrDefault(history, 0) + LEAN);
  }

  private static int triple(int first, int second, int third) {
    return ((first << BITS | second) << BITS | third) | 1 << 30;
  }

  private static int pair(int first, int second) {
    return first << BITS | second | 1 << 31;
  }
}
