package org.hedgerow.store.database;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.sql.SQLException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyOut;

/**
 * Reads the rows of a query by COPY, in its text format [1]: a cursor over rows and, within a row,
 * over columns from left to right. Close it, so that the connection is free for the next statement.
 *
 * <p>[1] PostgreSQL's manual, COPY, "File Formats"; the protocol sends each row as one message.
 */
public final class CopyReader implements AutoCloseable {
  private static final byte[] NO_ROW = new byte[0];

  private final CopyOut copy;
  private byte[] row = NO_ROW;
  private int start;
  private int end;

  private CopyReader(CopyOut copy) {
    this.copy = copy;
  }

  /**
   * @param query of ours, never with a text from outside
   */
  public static CopyReader of(Handle handle, String query) {
    try {
      PGConnection connection = handle.getConnection().unwrap(PGConnection.class);
      return new CopyReader(connection.getCopyAPI().copyOut("copy (" + query + ") to stdout"));
    } catch (SQLException problem) {
      throw new ConnectionException(problem);
    }
  }

  /** Goes to the next row, if there is one. */
  public boolean next() {
    try {
      byte[] next = copy.readFromCopy();
      row = next == null ? NO_ROW : next;
      end = -1;
      return next != null;
    } catch (SQLException problem) {
      throw new ConnectionException(problem);
    }
  }

  /** The next column, whole numbers from 0. */
  public int number() {
    goToNextColumn();
    int number = 0;
    for (int i = start; i < end; i++) {
      number = number * 10 + (row[i] - '0');
    }
    return number;
  }

  /** The next column, whole numbers below 64 in an array, as the bits of a number. */
  public long bits() {
    goToNextColumn();
    long bits = 0;
    int number = 0;
    for (int i = start + 1; i < end; i++) {
      if (row[i] >= '0' && row[i] <= '9') {
        number = number * 10 + (row[i] - '0');
      } else {
        bits |= 1L << number;
        number = 0;
      }
    }
    return bits;
  }

  public boolean flag() {
    goToNextColumn();
    return row[start] == 't';
  }

  /** The next column; null is given as an empty text. */
  public String text() {
    String text = nullable();
    return text == null ? "" : text;
  }

  public @Nullable String nullable() {
    goToNextColumn();
    String text = new String(row, start, end - start, UTF_8);
    if (text.indexOf('\\') < 0) {
      return text;
    }
    return text.equals("\\N") ? null : unescaped(text);
  }

  private static String unescaped(String text) {
    StringBuilder plain = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char sign = text.charAt(i);
      plain.append(sign == '\\' ? meant(text.charAt(++i)) : sign);
    }
    return plain.toString();
  }

  private static char meant(char escaped) {
    return switch (escaped) {
      case 'b' -> '\b';
      case 'f' -> '\f';
      case 'n' -> '\n';
      case 'r' -> '\r';
      case 't' -> '\t';
      case 'v' -> '\u000b';
      default -> escaped;
    };
  }

  private void goToNextColumn() {
    start = end + 1;
    end = start;
    while (row[end] != '\t' && row[end] != '\n') {
      end++;
    }
  }

  /** Drains the COPY stream; cancelling could abort the next statement instead. */
  @Override
  public void close() {
    while (copy.isActive()) {
      next();
    }
  }
}
