package org.hedgerow.phonics;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.IntStream;

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
    Span known = spans.get(key);
    return known != null
        ? known
        : pooled(
            key,
            new Span(
                IntStream.range(letter, letter + length).boxed().toList(),
                realisations.get(realisation)));
  }

  private Span closed(Span head, int tail) {
    Realisation realisation = head.realisation();
    Key key = new Key(realisation.id(), head.firstLetter(), -tail);
    Span known = spans.get(key);
    return known != null
        ? known
        : pooled(key, new Span(List.of(head.firstLetter(), tail), realisation));
  }

  /** The first of equal spans, if several threads make one. */
  private Span pooled(Key key, Span made) {
    Span earlier = spans.putIfAbsent(key, made);
    return earlier == null ? made : earlier;
  }
}
