package org.hedgerow.curriculum;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Words that children learn whole, before they can read them by their sounds.
 *
 * @param name letters, as in queries
 * @param title what a teacher calls them
 * @param words in lower case, each once; a plain apostrophe where there is one
 * @param note for whom they are
 */
public record SightWords(String name, String title, List<String> words, String note)
    implements NamedSet {

  private static final Pattern WORD = Pattern.compile("[a-z]+(?:'[a-z]+)*");

  /**
   * @throws IllegalArgumentException if it has no name that queries can say, or no words, or
   *     something else among them
   */
  public SightWords {
    words = List.copyOf(words);
    if (!name.matches("[a-z]+") || name.equals(SightWordSets.NO_WORDS)) {
      throw new IllegalArgumentException("a set of sight words is named by letters, not: " + name);
    }
    requireWords(name, words);
  }

  private static void requireWords(String name, List<String> words) {
    Set<String> seen = new HashSet<>();
    for (String word : words) {
      if (!isWord(word) || !seen.add(word)) {
        throw new IllegalArgumentException(
            "the sight words %s have “%s” twice, or it is no word".formatted(name, word));
      }
    }
    if (words.isEmpty()) {
      throw new IllegalArgumentException("the sight words %s have no words".formatted(name));
    }
  }

  /** Whether a text can stand among sight words: letters a to z, apostrophes between them. */
  public static boolean isWord(String text) {
    return WORD.matcher(text).matches();
  }

  public Set<String> asSet() {
    return Set.copyOf(words);
  }
}
