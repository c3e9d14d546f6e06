package org.hedgerow.sentences;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.Alignment;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Span;
import org.hedgerow.reading.Standard;

/** Which letters of a word are the phonogram, to be printed red. */
public final class TargetLetters {

  private final Lexicon lexicon;
  private final Standard standard;
  private final String accent;

  /**
   * @param accent the tag of the accent in which the word is said
   */
  public TargetLetters(Lexicon lexicon, Standard standard, String accent) {
    this.lexicon = lexicon;
    this.standard = standard;
    this.accent = accent;
  }

  /**
   * Positions from 0.
   *
   * @param word in lower case; an apostrophe and what follows it is no part of the phonogram
   */
  public List<Integer> of(String word) {
    int end = word.indexOf('\'');
    String letters = end < 0 ? word : word.substring(0, end);
    return lexicon.subject(letters).saidIn(accent).stream()
        .map(Pronunciation::alignment)
        .flatMap(alignment -> alignment.stream())
        .findFirst()
        .map(this::letters)
        .orElse(List.of());
  }

  private List<Integer> letters(Alignment alignment) {
    return alignment.spans().stream()
        .filter(span -> standard.isTarget(span.correspondence()))
        .map(Span::letters)
        .flatMap(List::stream)
        .toList();
  }
}
