package org.hedgerow.store.editions;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;
import org.hedgerow.phonics.Span;
import org.hedgerow.store.database.CopyWriter;
import org.jdbi.v3.core.Handle;

/**
 * Writes versions of words with all that hangs on them. Their ids count up in the order of the
 * words, so nobody else may write any meanwhile: lock the table of editions.
 */
final class WordWriter {
  static final int STEPS_FOR_A_WORD = 3;

  private final Handle handle;
  private final RealisationNumbers realisations;

  /** Words with the ids that their rows begin with. */
  private record Batch(List<Word> words, int edition, int firstWord, int firstPronunciation) {}

  WordWriter(Handle handle, List<AccentCatalogue> accents) {
    this.handle = handle;
    this.realisations = new RealisationNumbers(accents);
  }

  /**
   * Writes the words of the first edition into tables that are empty.
   *
   * @param step run {@link #STEPS_FOR_A_WORD} times for every word
   */
  void writeFirst(FirstEdition first, Runnable step) {
    Batch batch = batch(first.words(), first.number());
    writeWords(batch, step);
    KeysSetAside.during(handle, "word_tags", () -> writeTags(batch));
    writePronunciations(batch, step);
    KeysSetAside.during(handle, "spans", () -> writeSpans(batch, step));
  }

  /**
   * Writes words as they stand from an edition on.
   *
   * @param words whatever edition they say they are of
   */
  void write(List<Word> words, int edition) {
    Batch batch = batch(words, edition);
    writeWords(batch, () -> {});
    writeTags(batch);
    writePronunciations(batch, () -> {});
    writeSpans(batch, () -> {});
  }

  private Batch batch(List<Word> words, int edition) {
    int pronunciations = words.stream().mapToInt(word -> word.pronunciations().size()).sum();
    return new Batch(
        words, edition, reserve("words", words.size()), reserve("pronunciations", pronunciations));
  }

  /** Takes ids in a row; the first of them. */
  private int reserve(String table, int count) {
    int first =
        handle
            .createQuery("select nextval(pg_get_serial_sequence(:table, 'id'))")
            .bind("table", table)
            .mapTo(Integer.class)
            .one();
    if (count > 1) {
      handle.execute(
          "select setval(pg_get_serial_sequence(?, 'id'), ?)", table, first + count - 1L);
    }
    return first;
  }

  private void writeWords(Batch batch, Runnable step) {
    int id = batch.firstWord;
    try (CopyWriter rows =
        CopyWriter.into(handle, "words (id, spelling, status, commonness, since_edition)")) {
      for (Word word : batch.words) {
        rows.number(id++).text(word.spelling()).text(word.status().label());
        rows.number(word.commonness()).number(batch.edition).endRow();
        step.run();
      }
    }
  }

  private void writeTags(Batch batch) {
    int wordId = batch.firstWord;
    try (CopyWriter rows = CopyWriter.into(handle, "word_tags (word_id, tag, value, reason)")) {
      for (Word word : batch.words) {
        for (Tag tag : word.tags()) {
          rows.number(wordId).text(tag.kind()).text(tag.value()).text(tag.reason()).endRow();
        }
        wordId++;
      }
    }
  }

  private void writePronunciations(Batch batch, Runnable step) {
    int id = batch.firstPronunciation;
    int wordId = batch.firstWord;
    try (CopyWriter rows =
        CopyWriter.into(
            handle,
            "pronunciations (id, word_id, accent, sounds, arpabet, source, aside, margin,"
                + " irregular_reason)")) {
      for (Word word : batch.words) {
        for (Pronunciation each : word.pronunciations()) {
          rows.number(id++).number(wordId);
          write(rows, each);
          rows.endRow();
        }
        wordId++;
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

  private void writeSpans(Batch batch, Runnable step) {
    int pronunciationId = batch.firstPronunciation;
    try (CopyWriter rows =
        CopyWriter.into(handle, "spans (pronunciation_id, position, realisation_id, letters)")) {
      for (Word word : batch.words) {
        for (Pronunciation each : word.pronunciations()) {
          writeSpans(rows, pronunciationId++, each);
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
}
