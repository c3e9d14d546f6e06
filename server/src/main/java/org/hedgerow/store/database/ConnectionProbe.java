package org.hedgerow.store.database;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import javax.sql.DataSource;
import org.postgresql.PGProperty;
import org.postgresql.ds.PGSimpleDataSource;

/** Tries one connection before a pool is built, to say in a person's words why there is none. */
public final class ConnectionProbe {
  private static final int PATIENCE_SECONDS = 10;
  private static final int HASTE_SECONDS = 2;

  /** What the driver says where a password is wanted and none is given. */
  private static final String REJECTED = "08004";

  private ConnectionProbe() {}

  /**
   * @throws DatabaseUnavailableException if the database doesn't let us in
   */
  public static void check(DatabaseAddress address) {
    try (Connection connection = connect(address)) {
      connection.isValid(1);
    } catch (SQLException problem) {
      throw new DatabaseUnavailableException(message(address, problem), problem);
    }
  }

  /** Whether the database lets us in and answers; takes a few seconds at most. */
  public static boolean answers(DatabaseAddress address) {
    Properties properties = properties(address, HASTE_SECONDS);
    PGProperty.SOCKET_TIMEOUT.set(properties, HASTE_SECONDS);
    try (Connection connection = DriverManager.getConnection(address.url(), properties)) {
      return connection.isValid(HASTE_SECONDS);
    } catch (SQLException problem) {
      return false;
    }
  }

  /** A connection beside the pool, on which a statement may take as long as it likes. */
  public static Connection connect(DatabaseAddress address) throws SQLException {
    return DriverManager.getConnection(address.url(), properties(address, PATIENCE_SECONDS));
  }

  /** Gives such connections. */
  public static DataSource source(DatabaseAddress address) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setURL(address.url());
    address.user().ifPresent(source::setUser);
    address.password().ifPresent(source::setPassword);
    source.setApplicationName("hedgerow");
    source.setTcpKeepAlive(true);
    source.setConnectTimeout(PATIENCE_SECONDS);
    source.setLoginTimeout(PATIENCE_SECONDS);
    return source;
  }

  private static Properties properties(DatabaseAddress address, int seconds) {
    Properties properties = new Properties();
    address.user().ifPresent(user -> PGProperty.USER.set(properties, user));
    address.password().ifPresent(password -> PGProperty.PASSWORD.set(properties, password));
    PGProperty.APPLICATION_NAME.set(properties, "hedgerow");
    PGProperty.TCP_KEEP_ALIVE.set(properties, true);
    PGProperty.CONNECT_TIMEOUT.set(properties, seconds);
    PGProperty.LOGIN_TIMEOUT.set(properties, seconds);
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
