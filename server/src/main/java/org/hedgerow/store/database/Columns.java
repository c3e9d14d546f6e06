package org.hedgerow.store.database;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads columns of the row that a result is at. */
public final class Columns {
  private Columns() {}

  public static Instant instant(ResultSet row, String column) throws SQLException {
    return optionalInstant(row, column).orElseThrow();
  }

  /** Nothing for null. */
  public static Optional<Instant> optionalInstant(ResultSet row, String column)
      throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }

  /** Nothing for null. */
  public static OptionalInt optionalNumber(ResultSet row, String column) throws SQLException {
    int number = row.getInt(column);
    return row.wasNull() ? OptionalInt.empty() : OptionalInt.of(number);
  }

  public static List<String> texts(ResultSet row, String column) throws SQLException {
    return Arrays.asList((String[]) row.getArray(column).getArray());
  }
}
