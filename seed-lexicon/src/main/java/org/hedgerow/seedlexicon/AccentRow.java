package org.hedgerow.seedlexicon;

import java.util.List;

/**
 * An accent.
 *
 * @param tag a BCP 47 tag, such as {@code en-US}
 * @param name what a teacher calls it
 * @param parent the tag of the accent that tells what this one doesn't; empty for one that stands
 *     alone
 * @param pronunciations the path of its table of pronunciations in the seed folder; empty for the
 *     accent of the dictionary, and where there is none
 * @param vowels IPA symbols, in the order in which they are shown
 * @param consonants IPA symbols, in the order in which they are shown
 * @param spelling how its speakers spell: {@code american} or {@code british}
 */
public record AccentRow(
    String tag,
    String name,
    String parent,
    String pronunciations,
    List<String> vowels,
    List<String> consonants,
    String spelling) {

  public AccentRow {
    vowels = List.copyOf(vowels);
    consonants = List.copyOf(consonants);
  }

  static AccentRow from(TsvRow row) {
    return new AccentRow(
        row.required("tag"),
        row.required("name"),
        row.text("parent"),
        row.text("pronunciations"),
        List.of(row.required("vowels").split(" ")),
        List.of(row.required("consonants").split(" ")),
        row.required("spelling"));
  }
}
