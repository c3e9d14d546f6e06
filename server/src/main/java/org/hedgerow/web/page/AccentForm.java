package org.hedgerow.web.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The form in which accents are chosen, and reading rules.
 *
 * @param names the accents chosen, in words
 * @param rules the reading rules to choose from; none where they don't matter
 * @param hidden the parameters that the form sends again
 * @param compare the same list in two accents
 */
public record AccentForm(
    String names,
    List<Choice> accents,
    List<Choice> rules,
    List<Choice> hidden,
    Optional<String> compare) {

  /** The reading rules chosen, in words within a sentence. */
  String ruleName() {
    return rules.stream()
        .filter(Choice::chosen)
        .map(each -> AccentForm.inSentence(each.text()))
        .findFirst()
        .orElse("");
  }

  private static String inSentence(String title) {
    String small = title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    return small.contains("rules") ? small : "the rules “" + title + "”";
  }
}
