package org.hedgerow.store.database;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.sql.SQLException;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.postgresql.PGConnection;
import org.postgresql.copy.PGCopyOutputStream;

/**
 * Writes rows into a table by COPY, in its text format [1], many times as fast as by insert.
 * Closing it ends the rows. A failed write leaves the transaction unusable, so let it end.
 *
 * <p>[1] PostgreSQL's manual, COPY, "File Formats".
 */
public final class CopyWriter implements AutoCloseable {
  private static final int BUFFER = 1 << 16;

  private final Handle handle;
  private final String command;
  private final Writer out;
  private boolean rowBegun;

  private CopyWriter(Handle handle, String command, Writer out) {
    this.handle = handle;
    this.command = command;
    this.out = out;
  }

  /**
   * @param target a table of ours with its columns, as in {@code words (id, spelling)}
   */
  public static CopyWriter into(Handle handle, String target) {
    try {
      PGConnection connection = handle.getConnection().unwrap(PGConnection.class);
      String command = "copy " + target + " from stdin";
      return new CopyWriter(
          handle,
          command,
          new BufferedWriter(
              new OutputStreamWriter(new PGCopyOutputStream(connection, command, BUFFER), UTF_8)));
    } catch (SQLException problem) {
      throw new ConnectionException(problem);
    }
  }

  public CopyWriter number(long number) {
    return column(Long.toString(number));
  }

  public CopyWriter number(double number) {
    return column(Double.toString(number));
  }

  public CopyWriter flag(boolean flag) {
    return column(flag ? "t" : "f");
  }

  public CopyWriter text(String text) {
    return column(escaped(text));
  }

  /** Null for an empty text. */
  public CopyWriter optional(String text) {
    return text.isEmpty() ? nothing() : text(text);
  }

  public CopyWriter nothing() {
    return column("\\N");
  }

  public void endRow() {
    write("\n");
    rowBegun = false;
  }

  private CopyWriter column(String text) {
    if (rowBegun) {
      write("\t");
    }
    write(text);
    rowBegun = true;
    return this;
  }

  private static String escaped(String text) {
    return text.indexOf('\\') < 0 && text.chars().noneMatch(sign -> sign < ' ')
        ? text
        : text.replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n").replace("\r", "\\r");
  }

  private void write(String text) {
    try {
      out.write(text);
    } catch (IOException problem) {
      throw failure(problem);
    }
  }

  @Override
  public void close() {
    try {
      out.close();
    } catch (IOException problem) {
      throw failure(problem);
    }
  }

  /** The database's own complaint is the cause of it. */
  private UnableToExecuteStatementException failure(IOException problem) {
    return new UnableToExecuteStatementException(
        "Rows can't be written", problem, handle.createUpdate(command).getContext());
  }
}
