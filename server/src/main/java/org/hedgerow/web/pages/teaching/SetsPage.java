package org.hedgerow.web.pages.teaching;

import java.util.List;

/**
 * All sets of one kind.
 *
 * @param token of the forms
 * @param done what has just been done, or an empty text
 */
record SetsPage(String token, String done, List<Row> rows) {
  /**
   * @param mark of what the administrator sees
   * @param fixed why it can't be changed, or an empty text
   */
  record Row(String name, String title, String note, String mark, String fixed) {}
}
