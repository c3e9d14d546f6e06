package org.hedgerow.sentences.compose;

import java.util.List;
import java.util.Locale;

/** A sentence before it is ranked. */
record Candidate(Phrase phrase, SentenceKind kind, String pattern) {

  /** With its capital and its final mark. */
  String text() {
    String joined = String.join(" ", phrase.pieces().stream().map(Piece::text).toList());
    return joined.substring(0, 1).toUpperCase(Locale.ROOT) + joined.substring(1) + kind.mark();
  }

  /** The words in lower case. */
  List<String> words() {
    return phrase.pieces().stream().map(Piece::word).toList();
  }
}
