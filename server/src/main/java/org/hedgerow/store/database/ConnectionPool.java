package org.hedgerow.store.database;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import org.postgresql.PGProperty;

/** Makes the one pool of connections that a server has. */
public final class ConnectionPool {
  /**
   * Words are read from memory, so few requests need a connection at a time. No more than can work
   * at a time: writes then wait for each other, and reads for none of them. Under the load of
   * {@code ReviewLoad} on two cores three made reads and writes faster than ten did.
   */
  private static final int CONNECTIONS =
      Math.max(3, Runtime.getRuntime().availableProcessors() + 1);

  /** A request waits so long for a connection, and then so long for each statement. */
  private static final long WAIT_MILLISECONDS = 3_000;

  /** The database itself gives up a statement a little earlier, so that the connection lasts. */
  private static final String STATEMENT_TIMES =
      "set statement_timeout = '3500ms'; set idle_in_transaction_session_timeout = '60s'";

  private static final int SILENCE_SECONDS = 4;
  private static final int CONNECT_SECONDS = 2;
  private static final long VALIDATION_MILLISECONDS = 1_000;

  private ConnectionPool() {}

  /**
   * For what requests need: short statements. A database that is paused, or behind a network that
   * loses everything, holds nobody for more than a few seconds. What takes longer, such as the
   * first filling, has connections beside the pool.
   */
  public static HikariDataSource of(DatabaseAddress address) {
    HikariConfig config = new HikariConfig();
    config.setPoolName("bank");
    config.setJdbcUrl(address.url());
    address.user().ifPresent(config::setUsername);
    address.password().ifPresent(config::setPassword);
    config.setMaximumPoolSize(CONNECTIONS);
    config.setMinimumIdle(2);
    config.setConnectionTimeout(WAIT_MILLISECONDS);
    config.setValidationTimeout(VALIDATION_MILLISECONDS);
    config.setConnectionInitSql(STATEMENT_TIMES);
    set(config, PGProperty.APPLICATION_NAME, "hedgerow");
    set(config, PGProperty.TCP_KEEP_ALIVE, "true");
    set(config, PGProperty.CONNECT_TIMEOUT, String.valueOf(CONNECT_SECONDS));
    set(config, PGProperty.SOCKET_TIMEOUT, String.valueOf(SILENCE_SECONDS));
    return new HikariDataSource(config);
  }

  private static void set(HikariConfig config, PGProperty property, String value) {
    config.addDataSourceProperty(property.getName(), value);
  }
}
