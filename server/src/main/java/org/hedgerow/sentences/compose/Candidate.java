package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Locale;

/**
 * A sentence before it is ranked.
 *
 * @param pattern by which sentences that are made alike know each other
 * @param written whether it is a scene that somebody wrote, filled
 */
record Candidate(Phrase phrase, SentenceKind kind, String pattern, boolean written) {

  /** With its capital and its final mark. */
  String text() {
    String joined = String.join(" ", phrase.pieces().stream().map(PhraseWord::text).toList());
    return joined.substring(0, 1).toUpperCase(Locale.ROOT) + joined.substring(1) + kind.mark();
  }

  /** The words in lower case. */
  List<String> words() {
    return phrase.pieces().stream().map(PhraseWord::word).toList();
  }
}
