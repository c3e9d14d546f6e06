package org.hedgerow.sentences;

import java.util.Locale;

/** Puts another word in the place of one, with a capital and an article that suit it. */
public final class Rewording {

  private final Articles articles;

  public Rewording(Articles articles) {
    this.articles = articles;
  }

  /**
   * The text with the replacement.
   *
   * @param token of the text, which is replaced
   * @param replacement in lower case
   */
  public String of(String text, Token token, String replacement) {
    String before = mended(text.substring(0, token.start()), replacement);
    return before + like(token.text(), replacement) + text.substring(token.end());
  }

  private static String like(String replaced, String replacement) {
    return Character.isUpperCase(replaced.charAt(0))
        ? replacement.substring(0, 1).toUpperCase(Locale.ROOT) + replacement.substring(1)
        : replacement;
  }

  /** What stands before, its last article mended: <em>an</em> apple, <em>a</em> plum. */
  private String mended(String before, String next) {
    String words = before.stripTrailing();
    String spaces = before.substring(words.length());
    int start = words.lastIndexOf(' ') + 1;
    String last = words.substring(start);
    if (!last.equalsIgnoreCase("a") && !last.equalsIgnoreCase("an")) {
      return before;
    }
    String article = articles.startsWithVowel(next) ? "an" : "a";
    return words.substring(0, start) + like(last, article) + spaces;
  }
}
