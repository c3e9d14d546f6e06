package org.hedgerow.seedlexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * One row of a table; cells are read by the name of their column. Blank cells at the end may be
 * left out, because editors cut them off. Errors name the file and the line.
 */
public final class TsvRow {
  private final String file;
  private final int line;
  private final TsvHeader header;
  private final List<String> cells;

  private TsvRow(String file, int line, TsvHeader header, List<String> cells) {
    this.file = file;
    this.line = line;
    this.header = header;
    this.cells = cells;
  }

  static TsvRow parse(String file, int line, TsvHeader header, String text) {
    int columns = header.names().size();
    List<String> cells = split(text, columns);
    TsvRow row = new TsvRow(file, line, header, cells);
    if (cells.size() > columns) {
      throw row.mistake("which has %d columns instead of %d".formatted(cells.size(), columns));
    }
    return row;
  }

  private static List<String> split(String text, int expected) {
    List<String> cells = new ArrayList<>(expected);
    int start = 0;
    for (int tab = text.indexOf('\t'); tab >= 0; tab = text.indexOf('\t', start)) {
      cells.add(text.substring(start, tab));
      start = tab + 1;
    }
    cells.add(text.substring(start));
    return cells;
  }

  /** The line in the file, counted from 1. */
  public int line() {
    return line;
  }

  /** The names of all columns, in order. */
  public List<String> columns() {
    return header.names();
  }

  /** The text of a cell, empty where it is blank. */
  public String text(String column) {
    int position = header.position(column);
    if (position < 0) {
      throw mistake("where the column \"%s\" is not named above".formatted(column));
    }
    return position < cells.size() ? cells.get(position) : "";
  }

  /** The text of a cell that may not be blank. */
  public String required(String column) {
    String text = text(column);
    if (text.isBlank()) {
      throw mistake("whose column \"%s\" is blank".formatted(column));
    }
    return text;
  }

  /** The words of a cell, with spaces between; none for a blank cell. */
  public List<String> terms(String column) {
    return parts(column, "", " ");
  }

  /**
   * The parts of a cell; none for a blank one.
   *
   * @param mark what may stand before the first and is no part of it
   * @param separator what stands between them
   */
  public List<String> parts(String column, String mark, String separator) {
    String text = text(column);
    String bare = text.startsWith(mark) ? text.substring(mark.length()) : text;
    return bare.isBlank() ? List.of() : List.of(bare.split(separator));
  }

  /** A whole number. */
  public int number(String column) {
    String text = required(column);
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw mistake("whose column \"%s\" is no whole number: \"%s\"".formatted(column, text));
    }
  }

  /** A whole number, or empty for a blank cell. */
  public OptionalInt optionalNumber(String column) {
    return text(column).isBlank() ? OptionalInt.empty() : OptionalInt.of(number(column));
  }

  /** A whole number from 0 to 3. */
  public int level(String column) {
    int level = number(column);
    if (level < 0 || level > 3) {
      throw mistake("whose column \"%s\" is not 0 to 3: %d".formatted(column, level));
    }
    return level;
  }

  /** True for {@code yes}, false for {@code no}. */
  public boolean yesOrNo(String column) {
    String text = required(column);
    if (!text.equals("yes") && !text.equals("no")) {
      throw mistake("whose column \"%s\" is neither \"yes\" nor \"no\"".formatted(column));
    }
    return text.equals("yes");
  }

  /** A finite decimal number. */
  public double decimal(String column) {
    String text = required(column);
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // The same answer as for an infinite number.
    }
    throw mistake("whose column \"%s\" is no decimal number: \"%s\"".formatted(column, text));
  }

  /** True for {@code yes}, false for a blank cell. */
  public boolean yes(String column) {
    String text = text(column);
    if (!text.isEmpty() && !text.equals("yes")) {
      throw mistake("whose column \"%s\" is neither \"yes\" nor blank".formatted(column));
    }
    return !text.isEmpty();
  }

  /**
   * The error for something wrong in this row; {@code problem} continues "a mistake in line 7, …".
   */
  public DamagedSeedException mistake(String problem) {
    return DamagedSeedException.malformed(file, line, problem);
  }
}
