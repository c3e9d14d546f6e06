package org.hedgerow.web.api;

/** Cells of tables that a spreadsheet must not take for formulas. */
final class SafeCell {

  private static final String STARTS = "=+-@\t\r";

  private SafeCell() {}

  /** With an apostrophe before it if it would begin like a formula. */
  static String of(String text) {
    return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
