package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;

/**
 * What waits for a decision, the most wanted first.
 *
 * @param kinds to choose from; so the others
 * @param results of decisions on several at once that were just taken
 * @param undo what was decided last, to be undone
 */
record QueuePage(
    String token,
    List<QueueRow> rows,
    List<Option> kinds,
    List<Option> values,
    List<Option> authors,
    List<Option> accents,
    String news,
    List<Result> results,
    Optional<Undo> undo) {

  /**
   * What came of one decision among several.
   *
   * @param done whether it was taken
   */
  record Result(int id, String subject, boolean done, String message) {}

  boolean isFiltered() {
    return java.util.stream.Stream.of(kinds, values, authors, accents)
        .flatMap(List::stream)
        .anyMatch(each -> each.chosen() && !each.value().isEmpty());
  }
}
