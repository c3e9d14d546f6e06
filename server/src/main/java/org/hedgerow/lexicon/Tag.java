package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

/**
 * Something known of a word.
 *
 * @param kind what is said: {@code name}, {@code not-for-children} or {@code inflected}
 * @param value what it is: for an inflected form its base
 * @param reason where that comes from, for a teacher
 */
public record Tag(String kind, String value, String reason) {

  public static final String NAME = "name";
  public static final String NOT_FOR_CHILDREN = "not-for-children";
  public static final String INFLECTED = "inflected";

  public Tag {
    requireNonNull(kind);
    requireNonNull(value);
    requireNonNull(reason);
  }
}
