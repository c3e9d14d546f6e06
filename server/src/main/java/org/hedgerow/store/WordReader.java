package org.hedgerow.store;

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
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads the words of an edition with all that hangs on them. */
final class WordReader {
  private final Handle handle;
  private final int edition;
  private final List<AccentCatalogue> catalogues;
  private final Map<String, Accent> accents = new HashMap<>();
  private final Map<String, String> repeated = new HashMap<>();

  WordReader(Handle handle, int edition, List<AccentCatalogue> catalogues) {
    this.handle = handle;
    this.edition = edition;
    this.catalogues = catalogues;
    catalogues.forEach(each -> accents.put(each.accent().tag(), each.accent()));
  }

  /** The words in the order of their ids. */
  List<Word> read() {
    Map<Integer, List<Pronunciation>> pronunciations = pronunciations();
    Map<Integer, List<Tag>> tags = tags();
    List<Word> words = new ArrayList<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select id, spelling, status, commonness, since_edition from words where "
                + held()
                + " order by id")) {
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

  private String held() {
    return "since_edition <= %1$d and (until_edition is null or until_edition > %1$d)"
        .formatted(edition);
  }

  private static Status status(String label) {
    return Status.labelled(label).orElseThrow();
  }

  private Map<Integer, List<Tag>> tags() {
    Map<Integer, List<Tag>> tags = new HashMap<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select word_id, tag, value, reason from word_tags order by word_id, tag collate \"C\"")) {
      while (rows.next()) {
        int wordId = rows.number();
        Tag tag = new Tag(once(rows.text()), once(rows.text()), once(rows.text()));
        tags.computeIfAbsent(wordId, missing -> new ArrayList<>(2)).add(tag);
      }
    }
    return tags;
  }

  private Map<Integer, List<Pronunciation>> pronunciations() {
    Map<Integer, List<Span>> spans =
        new SpanReader(new RealisationNumbers(catalogues)).read(handle);
    Map<Integer, List<Pronunciation>> pronunciations = new HashMap<>();
    try (CopyReader rows =
        CopyReader.of(
            handle,
            "select id, word_id, accent, sounds, arpabet, source, aside, margin, irregular_reason"
                + " from pronunciations where "
                + held()
                + " order by id")) {
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
