package org.hedgerow.web.page;

import java.util.List;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Standard;

/**
 * Letters of a word with their sound, explained.
 *
 * @param letters as in lists: {@code oa}, {@code i-e}
 * @param target whether they are the phonogram of the list
 * @param concerned whether a finding is about them
 */
record SpanLine(
    String letters, SoundLabel says, String explanation, boolean target, boolean concerned) {

  static SpanLine of(Span span, Standard standard, List<Integer> concerned) {
    return new SpanLine(
        span.grapheme().text(),
        SoundLabel.of(span.sounds()),
        standard.isTarget(span.correspondence())
            ? "the phonogram of this list, as in " + span.correspondence().keyWord()
            : explanation(span),
        standard.isTarget(span.correspondence()),
        span.letters().stream().anyMatch(concerned::contains));
  }

  private static String explanation(Span span) {
    String keyWord = span.correspondence().keyWord();
    return switch (span.correspondence().kind()) {
      case BASIC -> "its first sound, as in " + keyWord;
      case DOUBLED -> "together say one sound, as in " + keyWord;
      case PHONOGRAM -> phonogram(span);
      case SILENT -> "says nothing here, as in " + keyWord;
      case ENDING -> "an ending, as in " + keyWord;
      case IRREGULAR -> irregular(span);
    };
  }

  private static String phonogram(Span span) {
    String keyWord = span.correspondence().keyWord();
    if (span.grapheme().isSplit()) {
      return "a split phonogram, as in " + keyWord;
    }
    if (span.grapheme().letterCount() == 1) {
      return "another of its sounds, as in " + keyWord;
    }
    return "a phonogram, as in " + keyWord;
  }

  private static String irregular(Span span) {
    return Standard.isReducedVowel(span.realisation())
        ? "a vowel said weakly"
        : "a rare spelling, not taught on its own";
  }
}
