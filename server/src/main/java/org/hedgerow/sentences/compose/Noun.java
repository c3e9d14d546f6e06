package org.hedgerow.sentences.compose;

import java.util.Set;

/**
 * A noun and what it stands for.
 *
 * @param singular the word itself; of a {@link Countability#PAIR} its only form
 * @param plural empty where it has none
 * @param size 0 for what has no body, 1 for what fits in a closed hand, 2 in one hand, 3 in both
 *     arms, 4 like a person, 5 bigger, 6 for buildings and land
 * @param kind the class that tells most of it
 * @param classes what it is, with all that these are
 * @param landmarks the prepositions that make a place of it: <em>on, in, by…</em>
 */
public record Noun(
    String singular,
    String plural,
    Countability countability,
    int size,
    String kind,
    Set<String> classes,
    Set<String> landmarks) {

  /** The prepositions that nouns say of themselves whether they make places with them. */
  public static final Set<String> LANDMARKS = Set.of("on", "in", "by", "under", "at", "near");

  public Noun {
    if (singular.isBlank()) {
      throw new IllegalArgumentException("a noun must have a word");
    }
    if (size < 0 || size > 6) {
      throw new IllegalArgumentException("a size is 0 to 6, not " + size + ": " + singular);
    }
    classes = Set.copyOf(classes);
    landmarks = Set.copyOf(landmarks);
  }

  public boolean is(String name) {
    return classes.contains(name);
  }
}
