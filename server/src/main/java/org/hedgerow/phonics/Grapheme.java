package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

/**
 * One or more letters that spell one sound; a <em>split</em> grapheme, written {@code i-e}, has its
 * letters around a consonant.
 *
 * @param text the letters as they are written in lists: {@code oa}, {@code i-e}
 */
public record Grapheme(String text) implements Comparable<Grapheme> {

  private static final String FORM = "[a-z]+|[aeiouy]-e";

  public Grapheme {
    requireNonNull(text);
    if (!text.matches(FORM)) {
      throw new IllegalArgumentException(
          "a grapheme is letters a to z, or a vowel letter, a hyphen and an e, but not: " + text);
    }
  }

  public boolean isSplit() {
    return text.length() == 3 && text.charAt(1) == '-';
  }

  /** The letters that stand together; of a split grapheme only its first. */
  public String head() {
    return isSplit() ? text.substring(0, 1) : text;
  }

  /** How many letters it has, the hyphen of a split grapheme not counted. */
  public int letterCount() {
    return isSplit() ? 2 : text.length();
  }

  @Override
  public int compareTo(Grapheme other) {
    return text.compareTo(other.text);
  }

  @Override
  public String toString() {
    return text;
  }
}
