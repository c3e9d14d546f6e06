package org.hedgerow.review;

import java.util.List;
import java.util.Optional;

/** What the people of the tests propose. The words are invented; they are said as they look. */
final class Proposals {
  private static final String LETTERS = "bdfklmnpstvz";
  private static final int COUNT = LETTERS.length();

  private Proposals() {}

  /** An invented word with a long o, another for every number below 1,728. */
  static NewWord word(int number) {
    return word(number, WordLabels.NONE);
  }

  static NewWord word(int number, WordLabels labels) {
    String first = letter(number);
    String last = letter(number / COUNT);
    String second = letter(number / COUNT / COUNT);
    boolean isLong = !second.equals("b");
    String spelling = isLong ? first + "oa" + second + "oa" + last : first + "oa" + last;
    String sounds =
        isLong
            ? String.join(" ", first, "oʊ", second, "oʊ", last)
            : String.join(" ", first, "oʊ", last);
    return new NewWord(spelling, List.of(saying("en-US", sounds)), labels);
  }

  private static String letter(int number) {
    return String.valueOf(LETTERS.charAt(number % COUNT));
  }

  static ProposedPronunciation saying(String accent, String sounds) {
    return new ProposedPronunciation(accent, sounds, List.of());
  }

  static WordLabels rude() {
    return new WordLabels(
        Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.of("it is rude"));
  }

  static WordLabels picturable(int level) {
    return new WordLabels(
        Optional.empty(), Optional.of(level), List.of(), List.of(), Optional.empty());
  }
}
