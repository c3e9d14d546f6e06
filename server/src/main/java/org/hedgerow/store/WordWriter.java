package org.hedgerow.store;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.jdbi.v3.core.Handle;

/**
 * Writes words with all that hangs on them into tables that are empty: the ids of words and of
 * pronunciations count up from 1 in the order of the words.
 */
final class WordWriter {
  static final int STEPS_FOR_A_WORD = 3;

  private final Handle handle;
  private final Edition edition;
  private final RealisationNumbers realisations;

  WordWriter(Handle handle, Edition edition) {
    this.handle = handle;
    this.edition = edition;
    this.realisations = new RealisationNumbers(edition.accents());
  }

  /**
   * @param step run {@link #STEPS_FOR_A_WORD} times for every word
   */
  void write(Runnable step) {
    writeWords(step);
    KeysSetAside.during(handle, "word_tags", this::writeTags);
    writePronunciations(step);
    KeysSetAside.during(handle, "spans", () -> writeSpans(step));
    countOnFromLast("words");
    countOnFromLast("pronunciations");
  }

  private void writeWords(Runnable step) {
    int id = 0;
    try (CopyWriter rows =
        CopyWriter.into(handle, "words (id, spelling, status, commonness, since_edition)")) {
      for (Word word : edition.words()) {
        rows.number(++id).text(word.spelling()).text(word.status().label());
        rows.number(word.commonness()).number(word.since()).endRow();
        step.run();
      }
    }
  }

  private void writeTags() {
    int wordId = 0;
    try (CopyWriter rows = CopyWriter.into(handle, "word_tags (word_id, tag, value, reason)")) {
      for (Word word : edition.words()) {
        wordId++;
        for (Tag tag : word.tags()) {
          rows.number(wordId).text(tag.kind()).text(tag.value()).text(tag.reason()).endRow();
        }
      }
    }
  }

  private void writePronunciations(Runnable step) {
    int id = 0;
    int wordId = 0;
    try (CopyWriter rows =
        CopyWriter.into(
            handle,
            "pronunciations (id, word_id, accent, sounds, arpabet, source, aside, margin,"
                + " irregular_reason, since_edition)")) {
      for (Word word : edition.words()) {
        wordId++;
        for (Pronunciation each : word.pronunciations()) {
          rows.number(++id).number(wordId);
          write(rows, each);
          rows.number(word.since()).endRow();
        }
        step.run();
      }
    }
  }

  private static void write(CopyWriter rows, Pronunciation pronunciation) {
    rows.text(pronunciation.accent()).text(Sound.spaced(pronunciation.sounds()));
    rows.optional(pronunciation.stressed()).text(pronunciation.source());
    rows.flag(pronunciation.aside());
    pronunciation
        .alignment()
        .map(Alignment::margin)
        .filter(margin -> !margin.isInfinite())
        .ifPresentOrElse(rows::number, rows::nothing);
    rows.optional(pronunciation.obstacle());
  }

  private void writeSpans(Runnable step) {
    int pronunciationId = 0;
    try (CopyWriter rows =
        CopyWriter.into(handle, "spans (pronunciation_id, position, realisation_id, letters)")) {
      for (Word word : edition.words()) {
        for (Pronunciation each : word.pronunciations()) {
          writeSpans(rows, ++pronunciationId, each);
        }
        step.run();
      }
    }
  }

  private void writeSpans(CopyWriter rows, int pronunciationId, Pronunciation pronunciation) {
    List<Span> spans = pronunciation.alignment().map(Alignment::spans).orElse(List.of());
    for (int position = 0; position < spans.size(); position++) {
      Span span = spans.get(position);
      rows.number(pronunciationId).number(position);
      rows.number(realisations.of(pronunciation.accent(), span.realisation()));
      rows.text(array(span.letters())).endRow();
    }
  }

  private static String array(List<Integer> letters) {
    return letters.stream().map(String::valueOf).collect(joining(",", "{", "}"));
  }

  /** Makes the ids that the database gives from now on follow those that we gave. */
  private void countOnFromLast(String table) {
    handle.execute(
        "select setval(pg_get_serial_sequence('%1$s', 'id'), (select max(id) from %1$s))"
            .formatted(table));
  }
}
