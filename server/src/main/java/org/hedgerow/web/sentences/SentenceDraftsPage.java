package org.hedgerow.web.sentences;

import java.util.List;
import org.hedgerow.web.page.Choice;

/**
 * Sentences made anew, and those that were kept before.
 *
 * @param asked words that each should hold
 * @param next the seed that gives others
 * @param missing what is missing where there are few or none; else empty
 * @param accents tags of the accents in which they are right
 */
record SentenceDraftsPage(
    SentenceFields fields,
    String asked,
    long next,
    List<Choice> kinds,
    List<Line> kept,
    List<Line> drafts,
    String missing,
    List<String> accents) {

  record Line(List<SentenceWord> words, String text) {}

  /** What was kept as plain text, a line each. */
  String plain() {
    return String.join("\n", kept.stream().map(Line::text).toList());
  }

  boolean isAsked() {
    return fields.isForPhonogram();
  }
}
