package org.hedgerow.web.words;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.hedgerow.web.page.MeaningWords;

/** What the parameters of a list ask for, in everyday words. */
final class ChoiceWords {

  private ChoiceWords() {}

  /** What a parameter asks for. */
  public static String of(String name, String value) {
    return switch (name) {
      case Narrowing.LETTERS -> lettersInWords(value);
      case Narrowing.SYLLABLES -> rangeInWords(value, "syllable");
      case Narrowing.POSITION -> value.equals("middle") ? "in the middle" : "at the " + value;
      case Narrowing.SHAPE -> "shape " + value;
      case Narrowing.COMMONNESS -> commonnessInWords(value);
      case Narrowing.SORT -> orderInWords(value);
      case Narrowing.TAUGHT -> "taught already: " + value.replace(",", ", ");
      case Narrowing.PICTURABLE -> picturableInWords(value);
      case Narrowing.PICTURED ->
          value.equals("true") ? "only words with a picture" : "with or without";
      case Narrowing.PART_OF_SPEECH -> value.equals("function") ? "little words" : value + "s";
      case Narrowing.MEANING -> MeaningWords.of(value);
      case Narrowing.MARK -> "only the starter set";
      case "differs-in" -> "other in " + value;
      case "status" -> value + " words only";
      case "include" -> included(value);
      case "rules" -> "other reading rules";
      default -> name + " " + value;
    };
  }

  private static String lettersInWords(String value) {
    return Character.isDigit(value.charAt(0))
        ? rangeInWords(value, "letter")
        : value
            .chars()
            .mapToObj(Character::toString)
            .collect(Collectors.joining(" ", "only the letters ", ""));
  }

  private static String rangeInWords(String range, String thing) {
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

  private static String commonnessInWords(String least) {
    return switch (least) {
      case "5" -> "only the commonest words";
      case "4" -> "common words";
      case "3" -> "fairly common words";
      case "2" -> "no rare words";
      default -> "rare words too";
    };
  }

  private static String picturableInWords(String least) {
    return switch (least) {
      case "3" -> "things to hold or photograph";
      case "2" -> "can be drawn";
      case "1" -> "hard to draw or better";
      default -> "easy or hard to draw";
    };
  }

  private static String included(String kinds) {
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

  private static String orderInWords(String order) {
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
