package org.hedgerow.sentences.compose;

import java.util.Set;

/** What may end a sentence: <em>at night, in the rain</em>. */
public record Closing(String text, Set<After> after) {

  /** What the sentence says before. */
  public enum After {
    /** That something was done. */
    ACTION,
    /** That something was done somewhere. */
    PLACE,
    /** How something is. */
    STATE
  }

  public Closing {
    after = Set.copyOf(after);
  }
}
