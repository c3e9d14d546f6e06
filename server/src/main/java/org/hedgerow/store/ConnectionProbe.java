package org.hedgerow.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import org.postgresql.PGProperty;

/** Tries one connection before a pool is built, to say in a person's words why there is none. */
final class ConnectionProbe {
  private static final String TEN_SECONDS = "10";

  /** What the driver says where a password is wanted and none is given. */
  private static final String REJECTED = "08004";

  private ConnectionProbe() {}

  /**
   * @throws DatabaseUnavailableException if the database doesn't let us in
   */
  static void check(DatabaseAddress address) {
    try (Connection connection = connect(address)) {
      connection.isValid(1);
    } catch (SQLException problem) {
      throw new DatabaseUnavailableException(message(address, problem), problem);
    }
  }

  /** A connection beside the pool. */
  static Connection connect(DatabaseAddress address) throws SQLException {
    return DriverManager.getConnection(address.url(), properties(address));
  }

  private static Properties properties(DatabaseAddress address) {
    Properties properties = new Properties();
    address.user().ifPresent(user -> PGProperty.USER.set(properties, user));
    address.password().ifPresent(password -> PGProperty.PASSWORD.set(properties, password));
    PGProperty.CONNECT_TIMEOUT.set(properties, TEN_SECONDS);
    PGProperty.LOGIN_TIMEOUT.set(properties, TEN_SECONDS);
    return properties;
  }

  /**
   * By SQLSTATE class (PostgreSQL's manual, appendix A); the driver's own words may hold the user's
   * name only.
   */
  private static String message(DatabaseAddress address, SQLException problem) {
    String state = String.valueOf(problem.getSQLState());
    if (state.startsWith("28") || state.equals(REJECTED)) {
      return "PostgreSQL at %s refuses this user and password. Check --database-user and the password."
          .formatted(address);
    }
    if (state.startsWith("08")) {
      return "No PostgreSQL answers at %s. Check --database-url, and that the server runs and lets this machine in."
          .formatted(address);
    }
    if (state.equals("3D000")) {
      return "PostgreSQL at %s has no such database. Create it, or correct --database-url."
          .formatted(address);
    }
    return "PostgreSQL at %s refuses the connection: %s".formatted(address, firstLine(problem));
  }

  private static String firstLine(SQLException problem) {
    return String.valueOf(problem.getMessage()).lines().findFirst().orElse("");
  }
}
