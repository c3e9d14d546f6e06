package org.hedgerow.web.sentences;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.phonics.Correspondence;

/**
 * Sentences of the bank.
 *
 * @param next left out at the end of the list
 */
record SentenceListView(
    int edition, Query query, int total, List<Entry> sentences, Optional<String> next) {

  /** What was asked for, with all defaults filled in. */
  record Query(
      Optional<String> phonogram,
      OptionalInt value,
      List<String> accent,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String word,
      int longest,
      int limit) {
    /** The older name, for those who read it. */
    @JsonProperty
    List<String> accents() {
      return accent;
    }
  }

  /** A sentence, and what it is for. */
  record Entry(String text, String phonogram, int value, List<String> accent) {
    /** The older name, for those who read it. */
    @JsonProperty
    List<String> accents() {
      return accent;
    }

    public static Entry of(Sentence sentence) {
      return new Entry(
          sentence.text(),
          sentence.value().grapheme().text(),
          sentence.value().value().orElseThrow(),
          sentence.accents());
    }
  }

  static SentenceListView of(SentenceRequest request, SentenceRequest.Found found) {
    SentenceFilter filter = request.filter();
    return new SentenceListView(
        request.edition(),
        new Query(
            filter.value().map(each -> each.grapheme().text()),
            filter.value().map(Correspondence::value).orElse(OptionalInt.empty()),
            filter.accents(),
            filter.word(),
            filter.longest(),
            request.limit()),
        found.total(),
        found.sentences().stream().map(Entry::of).toList(),
        found.next());
  }
}
