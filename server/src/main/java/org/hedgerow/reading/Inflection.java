package org.hedgerow.reading;

import static java.util.Objects.requireNonNull;

/**
 * That a word is a regular form of another.
 *
 * @param base the other word, such as <em>dog</em> of <em>dogs</em>
 * @param kind what the form is: plural, past, comparative …
 */
public record Inflection(String base, String kind) {

  public Inflection {
    requireNonNull(base);
    requireNonNull(kind);
  }
}
