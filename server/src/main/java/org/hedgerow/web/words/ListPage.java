package org.hedgerow.web.words;

import java.util.List;
import java.util.Optional;
import org.hedgerow.web.page.AccentForm;
import org.hedgerow.web.page.FittingList;
import org.hedgerow.web.page.OldEdition;

/**
 * The page of a list.
 *
 * @param total how many words the list has
 * @param from the number of the first word shown, from 1
 * @param offers wider lists, where this one is empty though nothing narrows it
 * @param plain all spellings of the list, one a line
 * @param next the address of the words after those shown
 * @param first the address of the first words, where others are shown
 * @param all the address of all words at once, where they are not shown and one page can hold them
 * @param query the parameters of the list, for downloads
 * @param accents the accents and rules that count, and the form to choose others
 * @param chart the address of the chart for these accents
 * @param old where it is a list of an old edition
 */
public record ListPage(
    Topic topic,
    int total,
    int from,
    List<WordTag> tags,
    FilterForm filter,
    List<FittingList> offers,
    String plain,
    Optional<String> next,
    Optional<String> first,
    Optional<String> all,
    String query,
    WordPanel look,
    AccentForm accents,
    String chart,
    Optional<OldEdition> old) {

  String count() {
    return total == 1 ? "1 word" : total + " words";
  }

  /** What is shown of the list, where it is not all. */
  String span() {
    return tags.size() == total ? "" : "%d to %d shown".formatted(from, from + tags.size() - 1);
  }

  /** What a screen reader says when the list has changed. */
  String news() {
    return total == 0
        ? "No words for %s with these choices.".formatted(topic.purpose())
        : "%s for %s.".formatted(count(), topic.purpose());
  }
}
