package org.hedgerow.web.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.web.query.SentenceFilter;

/** Sentences of the bank. */
record SentenceListView(int edition, Query query, int total, List<Entry> sentences) {

  /** What was asked for, with all defaults filled in. */
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Query(
      Optional<String> phonogram,
      OptionalInt value,
      List<String> accents,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String word,
      int longest) {}

  /** A sentence, and what it is for. */
  record Entry(String text, String phonogram, int value, List<String> accents) {

    static Entry of(Sentence sentence) {
      return new Entry(
          sentence.text(),
          sentence.value().grapheme().text(),
          sentence.value().value().orElseThrow(),
          sentence.accents());
    }
  }

  static SentenceListView of(int edition, SentenceFilter filter, List<Sentence> found) {
    return new SentenceListView(
        edition,
        new Query(
            filter.value().map(each -> each.grapheme().text()),
            filter.value().map(Correspondence::value).orElse(OptionalInt.empty()),
            filter.accents(),
            filter.word(),
            filter.longest()),
        found.size(),
        found.stream().map(Entry::of).toList());
  }
}
