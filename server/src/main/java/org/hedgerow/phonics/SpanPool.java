package org.hedgerow.phonics;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;

/**
 * Makes the spans of a path, each distinct span only once: a dictionary of a hundred thousand words
 * has some ten thousand distinct spans.
 */
final class SpanPool {

  private record Key(int realisation, int first, int last) {}

  private final List<Realisation> realisations;
  private final ConcurrentMap<Key, Span> spans = new ConcurrentHashMap<>();

  SpanPool(List<Realisation> realisations) {
    this.realisations = realisations;
  }

  List<Span> spans(Lattice lattice, int[] edges) {
    List<Span> result = new ArrayList<>(edges.length);
    int letter = 0;
    int open = -1;
    for (int edge : edges) {
      int realisation = lattice.realisation(edge);
      if (realisation == Lattice.CLOSING) {
        Span head = result.get(open);
        result.set(open, closed(head, letter++));
        continue;
      }
      Grapheme grapheme = realisations.get(realisation).grapheme();
      if (grapheme.isSplit()) {
        open = result.size();
      }
      int length = grapheme.head().length();
      result.add(contiguous(realisation, letter, length));
      letter += length;
    }
    return result;
  }

  private Span contiguous(int realisation, int letter, int length) {
    Key key = new Key(realisation, letter, letter + length);
    return spans.computeIfAbsent(
        key,
        missing ->
            new Span(
                java.util.stream.IntStream.range(letter, letter + length).boxed().toList(),
                realisations.get(realisation)));
  }

  private Span closed(Span head, int tail) {
    Realisation realisation = head.realisation();
    Key key = new Key(realisation.id(), head.firstLetter(), -tail);
    return spans.computeIfAbsent(
        key, missing -> new Span(List.of(head.firstLetter(), tail), realisation));
  }
}
