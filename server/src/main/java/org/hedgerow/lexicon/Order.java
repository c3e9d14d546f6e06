package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How a list is sorted. */
public enum Order {
  /** Approved words first, then the commonest, then the shortest, then by alphabet. */
  DEFAULT,
  /** By alphabet. */
  SPELLING,
  /** The shortest first, then as by default. */
  LETTERS,
  /** The commonest first, then as by default. */
  COMMONNESS;

  private static final Comparator<Word> COMMONEST_FIRST =
      Comparator.comparing(Word::commonness, Comparator.reverseOrder());
  private static final Comparator<Word> SHORTEST_FIRST =
      Comparator.comparing(word -> word.spelling().length());
  private static final Comparator<Word> BY_ALPHABET = Comparator.comparing(Word::spelling);

  /** Sorts stably, so that words that tie stay as they stood. */
  Comparator<Word> comparator() {
    return switch (this) {
      case DEFAULT ->
          Comparator.comparing(Word::status)
              .thenComparing(COMMONEST_FIRST)
              .thenComparing(SHORTEST_FIRST)
              .thenComparing(BY_ALPHABET);
      case SPELLING -> BY_ALPHABET;
      case LETTERS -> SHORTEST_FIRST;
      case COMMONNESS -> COMMONEST_FIRST;
    };
  }

  /** The name in queries, in lower case. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The order with this label, if there is one. */
  public static Optional<Order> labelled(String label) {
    return Arrays.stream(values()).filter(each -> each.label().equals(label)).findFirst();
  }
}
