package org.hedgerow.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;

/** Makes the one pool of connections that a server has. */
final class ConnectionPool {
  /**
   * Words are read from memory, so few requests need a connection at a time. No more than can work
   * at a time: writes then wait for each other, and reads for none of them. Under the load of
   * {@code ReviewLoad} on two cores three made reads and writes faster than ten did.
   */
  private static final int CONNECTIONS =
      Math.max(3, Runtime.getRuntime().availableProcessors() + 1);

  private static final long WAIT_MILLISECONDS = 5_000;

  private ConnectionPool() {}

  static HikariDataSource of(DatabaseAddress address) {
    HikariConfig config = new HikariConfig();
    config.setPoolName("bank");
    config.setJdbcUrl(address.url());
    address.user().ifPresent(config::setUsername);
    address.password().ifPresent(config::setPassword);
    config.setMaximumPoolSize(CONNECTIONS);
    config.setMinimumIdle(2);
    config.setConnectionTimeout(WAIT_MILLISECONDS);
    config.addDataSourceProperty("ApplicationName", "hedgerow");
    config.addDataSourceProperty("tcpKeepAlive", "true");
    return new HikariDataSource(config);
  }
}
