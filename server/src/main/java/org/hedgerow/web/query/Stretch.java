package org.hedgerow.web.query;

import org.hedgerow.lexicon.Range;

/**
 * Which part of a list is asked for that isn't one of words that pass: it goes on after the last
 * thing that the asker has, by its name, so that it doesn't shift when the list grows.
 */
public final class Stretch {
  public static final String LIMIT = "limit";
  public static final String AFTER = "after";

  private static final int MOST = 100;
  private static final int USUAL = 20;
  private static final int MOST_EDITIONS = 999_999;

  private Stretch() {}

  /** How many to give at most. */
  public static int limit(Parameters parameters) {
    return new ChoiceReader(parameters).number(LIMIT, new Range(1, MOST), USUAL);
  }

  /** The number of the edition to go on after; greater than all if none is given. */
  public static int afterEdition(Parameters parameters) {
    return new ChoiceReader(parameters)
        .number(AFTER, new Range(1, MOST_EDITIONS), MOST_EDITIONS + 1);
  }

  /** The word to go on after; an empty text, which comes before all, if none is given. */
  public static String afterWord(Parameters parameters) {
    return parameters
        .text(AFTER)
        .flatMap(text -> new SpellingReader(parameters.faults()).read(AFTER, text))
        .orElse("");
  }
}
