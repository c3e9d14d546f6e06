package org.hedgerow.web.curriculum;

import java.util.List;
import java.util.Optional;

/**
 * All sets of one kind.
 *
 * @param token of the forms
 * @param done what has just been done, or an empty text
 * @param undo address of the form as it was before that; empty if there was nothing before
 */
record SetsPage(String token, String done, Optional<String> undo, List<Row> rows) {
  /**
   * @param mark of what the administrator sees
   * @param fixed why it can't be changed, or an empty text
   */
  record Row(String name, String title, String note, String mark, String fixed) {}
}
