package org.hedgerow.web.query;

import java.util.Locale;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;

/** Reads words that people type: letters a to z, in capitals or not. */
public final class SpellingReader {

  /** The longest word that is read, in letters. */
  public static final int MAX_LENGTH = 40;

  private final ValidationErrors errors;

  public SpellingReader(ValidationErrors errors) {
    this.errors = errors;
  }

  /** The word in small letters; empty if it is none. */
  public Optional<String> read(String parameter, String text) {
    String word = text.strip();
    Optional<String> obstacle = obstacle(word);
    obstacle.ifPresent(
        message -> errors.add(ValidationError.of(ProblemType.INVALID_WORD, parameter, message)));
    return obstacle.isPresent() ? Optional.empty() : Optional.of(word.toLowerCase(Locale.ROOT));
  }

  private static Optional<String> obstacle(String word) {
    if (word.isEmpty()) {
      return Optional.of("The word is empty. Give it at least one letter.");
    }
    if (word.length() > MAX_LENGTH) {
      return Optional.of(
          "%s is too long. A word has at most %d letters.".formatted(Quoted.of(word), MAX_LENGTH));
    }
    return word.codePoints()
        .filter(character -> !isLetter(character))
        .mapToObj(character -> foreign(word, character))
        .findFirst();
  }

  /** Asked of the letter as it was typed: some others become a to z in small letters. */
  private static boolean isLetter(int character) {
    return (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z');
  }

  private static String foreign(String word, int character) {
    return "%s has %s in it. Use the letters a to z only."
        .formatted(Quoted.of(word), kind(character));
  }

  private static String kind(int character) {
    if (Character.isWhitespace(character)) {
      return "a space";
    }
    if (Character.isDigit(character)) {
      return "a digit";
    }
    if ("'’‘ʼ`".indexOf(character) >= 0) {
      return "an apostrophe";
    }
    if (Character.getType(character) == Character.DASH_PUNCTUATION) {
      return "a hyphen";
    }
    String shown = Quoted.of(Character.toString(character));
    return (Character.isLetter(character) ? "the letter " : "the character ") + shown;
  }
}
