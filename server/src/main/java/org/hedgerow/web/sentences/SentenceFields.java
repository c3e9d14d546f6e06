package org.hedgerow.web.sentences;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.page.Choice;

/**
 * The fields of the forms about sentences.
 *
 * @param edition an older edition that was named
 * @param query what was asked, as it follows the path of an address; empty where all is as usual
 */
record SentenceFields(
    List<Choice> values,
    List<Choice> accents,
    List<Choice> sightWords,
    String taught,
    int longest,
    Optional<String> edition,
    String query) {

  /** Whether a phonogram is chosen. */
  boolean isForPhonogram() {
    return values.stream().anyMatch(each -> each.chosen() && !each.value().isEmpty());
  }

  /** What is chosen, as in {@code oa as in boat}. */
  String topic() {
    return values.stream().filter(Choice::chosen).map(Choice::text).findFirst().orElse("");
  }

  /** The label of the value chosen, as in {@code oa 1}; empty where none is. */
  String value() {
    return values.stream().filter(Choice::chosen).map(Choice::value).findFirst().orElse("");
  }
}
