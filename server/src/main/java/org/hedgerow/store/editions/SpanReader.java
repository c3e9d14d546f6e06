package org.hedgerow.store.editions;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.phonics.Span;
import org.hedgerow.store.database.CopyReader;
import org.jdbi.v3.core.Handle;

/**
 * Reads the spans of pronunciations, each distinct span only once: a dictionary of a hundred
 * thousand words has some ten thousand distinct spans.
 */
final class SpanReader {
  /** The letters as bits; no word has more than 64. */
  private record Key(int realisation, long letters) {}

  private final RealisationNumbers realisations;
  private final Map<Key, Span> spans = new HashMap<>();

  SpanReader(RealisationNumbers realisations) {
    this.realisations = realisations;
  }

  /** The spans of some words in order, by the id of the pronunciation. */
  Map<Integer, List<Span>> read(Handle handle, WordVersions versions) {
    Map<Integer, List<Span>> byPronunciation = new HashMap<>();
    List<Span> current = new ArrayList<>();
    int currentId = -1;
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select s.pronunciation_id, s.realisation_id, s.letters from "
                + versions.spans()
                + " order by s.pronunciation_id, s.position")) {
      while (rows.next()) {
        int id = rows.number();
        if (id != currentId) {
          byPronunciation.put(currentId, List.copyOf(current));
          current.clear();
          currentId = id;
        }
        current.add(span(rows.number(), rows.bits()));
      }
    }
    byPronunciation.put(currentId, List.copyOf(current));
    return byPronunciation;
  }

  private Span span(int realisation, long letters) {
    return spans.computeIfAbsent(new Key(realisation, letters), this::make);
  }

  private Span make(Key key) {
    List<Integer> letters = new ArrayList<>();
    for (long rest = key.letters; rest != 0; rest &= rest - 1) {
      letters.add(Long.numberOfTrailingZeros(rest));
    }
    return new Span(letters, realisations.get(key.realisation));
  }
}
