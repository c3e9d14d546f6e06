package org.hedgerow.sentences;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a text into words, numbers, marks and what is none of these. Spaces are left out. */
final class Tokenizer {

  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<word>[A-Za-z]+(?:['\u2019][A-Za-z]+)*)"
              + "|(?<number>[0-9]+(?:[.,][0-9]+)*)"
              + "|(?<mark>\\p{IsPunctuation})"
              + "|(?<other>[^\\sA-Za-z0-9\\p{IsPunctuation}]+)",
          Pattern.UNICODE_CHARACTER_CLASS);

  private static final Map<String, Token.Kind> KINDS =
      Map.of(
          "word", Token.Kind.WORD,
          "number", Token.Kind.NUMBER,
          "mark", Token.Kind.MARK,
          "other", Token.Kind.OTHER);

  private Tokenizer() {}

  static List<Token> tokens(String text) {
    List<Token> tokens = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(text);
    while (matcher.find()) {
      tokens.add(new Token(matcher.group(), matcher.start(), matcher.end(), kind(matcher)));
    }
    return tokens;
  }

  private static Token.Kind kind(Matcher matcher) {
    return KINDS.entrySet().stream()
        .filter(entry -> matcher.group(entry.getKey()) != null)
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(Token.Kind.OTHER);
  }
}
