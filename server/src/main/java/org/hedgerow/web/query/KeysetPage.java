package org.hedgerow.web.query;

import org.hedgerow.lexicon.Range;

/**
 * Keyset paging: a page begins after the last item of the page before, so that it doesn't shift
 * when the list grows.
 */
public final class KeysetPage {
  public static final String LIMIT = "limit";
  public static final String AFTER = "after";

  private static final int MAX = 100;
  private static final int DEFAULT = 20;
  private static final int MAX_EDITIONS = 999_999;

  private KeysetPage() {}

  /** The maximum number of items. */
  public static int limit(Parameters parameters) {
    return new ChoiceReader(parameters).number(LIMIT, new Range(1, MAX), DEFAULT);
  }

  /** The number of the edition to go on after; greater than all if none is given. */
  public static int afterEdition(Parameters parameters) {
    return new ChoiceReader(parameters).number(AFTER, new Range(1, MAX_EDITIONS), MAX_EDITIONS + 1);
  }

  /** The word to go on after; an empty text, which comes before all, if none is given. */
  public static String afterWord(Parameters parameters) {
    return parameters
        .text(AFTER)
        .flatMap(text -> new SpellingReader(parameters.errors()).read(AFTER, text))
        .orElse("");
  }
}
