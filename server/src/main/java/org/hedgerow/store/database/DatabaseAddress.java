package org.hedgerow.store.database;

import java.util.Optional;
import java.util.Properties;
import org.postgresql.Driver;
import org.postgresql.PGProperty;

/**
 * Where a PostgreSQL database is and how to sign in.
 *
 * @param url a JDBC URL, {@code jdbc:postgresql://host:port/database}
 * @param user the role to sign in as, unless the URL names it
 * @param password its password, unless the URL holds it
 */
public record DatabaseAddress(String url, Optional<String> user, Optional<String> password) {
  private static final String SCHEME = "jdbc:postgresql:";

  /**
   * @throws DatabaseUnavailableException if the URL is none of PostgreSQL's
   */
  public DatabaseAddress {
    if (!url.startsWith(SCHEME) || Driver.parseURL(url, null) == null) {
      throw new DatabaseUnavailableException(
          "The database URL must look like jdbc:postgresql://host:5432/database.");
    }
  }

  public static DatabaseAddress local(
      int port, String database, String user, Optional<String> password) {
    return new DatabaseAddress(
        SCHEME + "//localhost:" + port + "/" + database, Optional.of(user), password);
  }

  /** For people and logs: host, port and database without user, password or parameters. */
  @Override
  public String toString() {
    Properties parts = Driver.parseURL(url, null);
    return PGProperty.PG_HOST.getOrDefault(parts)
        + ":"
        + PGProperty.PG_PORT.getOrDefault(parts)
        + "/"
        + PGProperty.PG_DBNAME.getOrDefault(parts);
  }
}
