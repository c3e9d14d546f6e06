package org.hedgerow.lexicon;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** How a list is sorted. */
public enum Order {
  /**
   * Approved words first, then the starter set, then the commonest, then the shortest, then by
   * alphabet.
   */
  DEFAULT,
  /** By alphabet. */
  SPELLING,
  /** The shortest first, then as by default. */
  LETTERS,
  /** The commonest first, then as by default. */
  COMMONNESS,
  /** Those that make the best pictures first, then as by default. */
  PICTURABLE,
  /** Those with the fewest syllables first, then as by default. */
  SYLLABLES;

  private static final Comparator<Word> COMMONEST_FIRST =
      Comparator.comparing(Word::commonness, Comparator.reverseOrder());
  private static final Comparator<Word> SHORTEST_FIRST =
      Comparator.comparing(word -> word.spelling().length());
  private static final Comparator<Word> STARTER_SET_FIRST =
      Comparator.comparing(Word::isStarter, Comparator.reverseOrder());
  private static final Comparator<Word> BEST_PICTURE_FIRST =
      Comparator.comparing(word -> -word.picturable().orElse(0));
  private static final Comparator<Word> BY_ALPHABET = Comparator.comparing(Word::spelling);

  /** Sorts stably, so that words that tie stay as they stood. */
  Comparator<Word> comparator() {
    return switch (this) {
      case DEFAULT ->
          Comparator.comparing(Word::status)
              .thenComparing(STARTER_SET_FIRST)
              .thenComparing(COMMONEST_FIRST)
              .thenComparing(SHORTEST_FIRST)
              .thenComparing(BY_ALPHABET);
      case SPELLING -> BY_ALPHABET;
      case LETTERS -> SHORTEST_FIRST;
      case COMMONNESS -> COMMONEST_FIRST;
      case PICTURABLE -> BEST_PICTURE_FIRST;
      case SYLLABLES -> Comparator.comparing(Word::syllables);
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
