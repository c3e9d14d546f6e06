package org.hedgerow.web.review;

import java.util.List;

/**
 * Many words at once.
 *
 * @param text pasted or sent so far
 * @param accents of words that come without; so the others
 * @param errors because of which the table can't be read
 * @param rows judged; empty before
 * @param good how many of them can be sent
 * @param sent how many were sent just now
 */
record TablePage(
    String token,
    String text,
    List<Option> accents,
    List<Option> wantedFor,
    List<String> errors,
    List<Row> rows,
    int good,
    int sent) {

  /**
   * A row in words.
   *
   * @param verdict {@code pass}, {@code look} or {@code fail}
   * @param said how it would be said
   * @param contribution its number, or 0 where it wasn't sent
   */
  record Row(
      int number,
      String spelling,
      String verdict,
      String verdictWords,
      String said,
      List<String> remarks,
      String serves,
      int contribution) {}

  int bad() {
    return rows.size() - good;
  }
}
