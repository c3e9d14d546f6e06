package org.hedgerow.web.http;

/** Cells of tables that a spreadsheet must not take for formulas. */
public final class SafeCell {

  private static final String STARTS = "=+-@\t\r";

  private SafeCell() {}

  /** With an apostrophe before it if it would begin like a formula. */
  public static String of(String text) {
    return !text.isEmpty() && STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  /** What stood in a cell before it was made safe. */
  public static String original(String cell) {
    return cell.length() > 1 && cell.startsWith("'") && STARTS.indexOf(cell.charAt(1)) >= 0
        ? cell.substring(1)
        : cell;
  }
}
