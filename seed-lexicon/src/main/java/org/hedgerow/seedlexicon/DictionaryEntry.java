package org.hedgerow.seedlexicon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A word of the CMU Pronouncing Dictionary.
 *
 * @param word lower-case letters only
 * @param pronunciations in the dictionary's order, at least one: ARPAbet phones separated by
 *     blanks, vowels with their stress (1 main, 2 second, 0 none), such as {@code F OW1 N AH0 G R
 *     AE2 M}
 */
public record DictionaryEntry(String word, List<String> pronunciations) {

  public DictionaryEntry {
    pronunciations = List.copyOf(pronunciations);
  }

  /** Joins the lines of each word; lines of one word stand together. */
  static List<DictionaryEntry> grouped(List<PronunciationRow> rows) {
    List<DictionaryEntry> entries = new ArrayList<>(rows.size());
    int start = 0;
    while (start < rows.size()) {
      int end = endOfWord(rows, start);
      entries.add(entry(rows.subList(start, end)));
      start = end;
    }
    return Collections.unmodifiableList(entries);
  }

  private static int endOfWord(List<PronunciationRow> rows, int start) {
    int end = start + 1;
    while (end < rows.size() && rows.get(end).word().equals(rows.get(start).word())) {
      end++;
    }
    return end;
  }

  private static DictionaryEntry entry(List<PronunciationRow> rows) {
    return new DictionaryEntry(
        rows.get(0).word(), rows.stream().map(PronunciationRow::arpabet).toList());
  }
}
