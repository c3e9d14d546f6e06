package org.hedgerow.store.editions;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Accent;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;
import org.hedgerow.store.database.CopyReader;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads versions of words with all that hangs on them. */
final class WordReader {
  private final Handle handle;
  private final List<AccentCatalogue> catalogues;
  private final Map<String, Accent> accents = new HashMap<>();
  private final Map<String, String> repeated = new HashMap<>();

  WordReader(Handle handle, List<AccentCatalogue> catalogues) {
    this.handle = handle;
    this.catalogues = catalogues;
    catalogues.forEach(each -> accents.put(each.accent().tag(), each.accent()));
  }

  /** The words in the order of their ids. */
  List<Word> read(WordVersions versions) {
    Map<Integer, List<Pronunciation>> pronunciations = pronunciations(versions);
    Map<Integer, List<Tag>> tags = tags(versions);
    List<Word> words = new ArrayList<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select w.id, w.spelling, w.status, w.commonness, w.since_edition from "
                + versions.words()
                + " order by w.id")) {
      while (rows.next()) {
        int id = rows.number();
        words.add(
            new Word(
                rows.text(),
                status(rows.text()),
                rows.number(),
                rows.number(),
                tags.getOrDefault(id, List.of()),
                pronunciations.getOrDefault(id, List.of())));
      }
    }
    return words;
  }

  private static Status status(String label) {
    return Status.labelled(label).orElseThrow();
  }

  private Map<Integer, List<Tag>> tags(WordVersions versions) {
    Map<Integer, List<Tag>> tags = new HashMap<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select t.word_id, t.tag, t.value, t.reason from "
                + versions.tags()
                + " order by t.word_id, t.tag collate \"C\"")) {
      while (rows.next()) {
        int wordId = rows.number();
        Tag tag = new Tag(once(rows.text()), once(rows.text()), once(rows.text()));
        tags.computeIfAbsent(wordId, missing -> new ArrayList<>(2)).add(tag);
      }
    }
    return tags;
  }

  private Map<Integer, List<Pronunciation>> pronunciations(WordVersions versions) {
    Map<Integer, List<Span>> spans =
        new SpanReader(new RealisationNumbers(catalogues)).read(handle, versions);
    Map<Integer, List<Pronunciation>> pronunciations = new HashMap<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select p.id, p.word_id, p.accent, p.sounds, p.arpabet, p.source, p.aside, p.margin,"
                + " p.irregular_reason from "
                + versions.pronunciations()
                + " order by p.id")) {
      while (rows.next()) {
        List<Span> its = spans.getOrDefault(rows.number(), List.of());
        int wordId = rows.number();
        pronunciations
            .computeIfAbsent(wordId, missing -> new ArrayList<>(2))
            .add(pronunciation(rows, its));
      }
    }
    return pronunciations;
  }

  private Pronunciation pronunciation(CopyReader rows, List<Span> spans) {
    String accent = once(rows.text());
    return new Pronunciation(
        accent,
        Sounds.read(rows.text(), requireNonNull(accents.get(accent))),
        rows.text(),
        once(rows.text()),
        rows.flag(),
        alignment(spans, rows.nullable()),
        once(rows.text()));
  }

  private static Optional<Alignment> alignment(List<Span> spans, @Nullable String margin) {
    return spans.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Alignment(
                spans, margin == null ? Double.POSITIVE_INFINITY : Double.parseDouble(margin)));
  }

  /** Texts that come again and again are kept only once. */
  private String once(String text) {
    return repeated.computeIfAbsent(text, same -> same);
  }
}
