package org.hedgerow.web.words;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What the parameters of a list ask for, in everyday words. */
final class ChoiceWords {

  private ChoiceWords() {}

  static String letters(String value) {
    return Character.isDigit(value.charAt(0))
        ? range(value, "letter")
        : value
            .chars()
            .mapToObj(Character::toString)
            .collect(Collectors.joining(" ", "only the letters ", ""));
  }

  static String range(String range, String thing) {
    int hyphen = range.indexOf('-');
    if (hyphen < 0) {
      return range.equals("1") ? "1 " + thing : range + " " + thing + "s";
    }
    String least = range.substring(0, hyphen);
    String most = range.substring(hyphen + 1);
    return most.length() > 1 || most.equals("9")
        ? "%s %ss or more".formatted(least, thing)
        : "%s to %s %ss".formatted(least, most, thing);
  }

  static String commonness(String least) {
    return switch (least) {
      case "5" -> "only the commonest words";
      case "4" -> "common words";
      case "3" -> "fairly common words";
      case "2" -> "no rare words";
      default -> "rare words too";
    };
  }

  static String picturable(String least) {
    return switch (least) {
      case "3" -> "things to hold or photograph";
      case "2" -> "can be drawn";
      case "1" -> "hard to draw or better";
      default -> "easy or hard to draw";
    };
  }

  static String included(String kinds) {
    return Arrays.stream(kinds.split(",", -1))
        .map(
            kind ->
                switch (kind) {
                  case "names" -> "also names";
                  case "inflected" -> "also word forms";
                  case "other-spellings" -> "also spellings of other countries";
                  default -> "also words " + kind.replace('-', ' ');
                })
        .collect(Collectors.joining(", "));
  }

  static String order(String order) {
    return switch (order) {
      case "spelling" -> "A to Z";
      case "letters" -> "shortest first";
      case "commonness" -> "commonest first";
      case "picturable" -> "best to draw first";
      case "syllables" -> "fewest syllables first";
      default -> "usual order";
    };
  }
}
