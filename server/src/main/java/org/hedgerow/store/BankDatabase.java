package org.hedgerow.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.postgres.PostgresPlugin;

/**
 * The open database of a bank, its schema up to date. Safe for use by several threads. Closing it
 * returns every connection and stops the embedded server, if it has one.
 */
public final class BankDatabase implements AutoCloseable {
  private final DatabaseAddress address;
  private final HikariDataSource pool;
  private final SchemaMigration migration;
  private final Jdbi jdbi;
  private final Transactions transactions;
  private final Optional<EmbeddedServer> server;
  private final Outage outage = new Outage(this::answersNow);

  private BankDatabase(DatabaseAddress address, Optional<EmbeddedServer> server) {
    ConnectionProbe.check(address);
    this.address = address;
    this.server = server;
    this.pool = ConnectionPool.of(address);
    this.migration = migrated(pool);
    this.jdbi =
        Jdbi.create(pool)
            .installPlugin(new PostgresPlugin())
            .registerRowMapper(new RecordMappers());
    this.transactions = new Transactions(jdbi);
  }

  /**
   * Starts PostgreSQL in this process on a persistent folder, which is made if need be.
   *
   * @throws DatabaseUnavailableException if it can't be started there
   */
  public static BankDatabase embedded(Path dataFolder) {
    return over(EmbeddedServer.start(dataFolder, Optional.empty()));
  }

  /**
   * As {@link #embedded(Path)}, with PostgreSQL's programs unpacked elsewhere, where several
   * folders share them.
   */
  static BankDatabase embedded(Path dataFolder, Path engine) {
    return over(EmbeddedServer.start(dataFolder, Optional.of(engine)));
  }

  /**
   * As {@link #embedded(Path)}, but where another Hedgerow serves the folder, connects to its
   * database.
   *
   * @throws DatabaseUnavailableException if neither is possible
   */
  public static BankDatabase embeddedOrRunning(Path dataFolder) {
    return EmbeddedServer.running(dataFolder)
        .map(BankDatabase::external)
        .orElseGet(() -> embedded(dataFolder));
  }

  /**
   * Connects to a PostgreSQL server that runs already.
   *
   * @throws DatabaseUnavailableException if it doesn't let us in
   */
  public static BankDatabase external(DatabaseAddress address) {
    return new BankDatabase(address, Optional.empty());
  }

  private static BankDatabase over(EmbeddedServer server) {
    try {
      return new BankDatabase(server.address(), Optional.of(server));
    } catch (RuntimeException failure) {
      server.close();
      throw failure;
    }
  }

  private static SchemaMigration migrated(HikariDataSource pool) {
    try {
      return SchemaMigration.run(pool);
    } catch (RuntimeException failure) {
      pool.close();
      throw failure;
    }
  }

  public Jdbi jdbi() {
    return jdbi;
  }

  Transactions transactions() {
    return transactions;
  }

  /** Does something once the transaction that this thread is in has been committed, or at once. */
  public void afterwards(Runnable task) {
    transactions.afterwards(task);
  }

  /** Whether it could be reached lately. */
  Outage outage() {
    return outage;
  }

  public DatabaseAddress address() {
    return address;
  }

  /** What opening it did to the schema. */
  public SchemaMigration migration() {
    return migration;
  }

  /** Whether the database answers just now; takes at most five seconds. */
  public boolean answers() {
    return !outage.isOn() && answersNow();
  }

  private boolean answersNow() {
    try {
      return jdbi.withHandle(
              handle ->
                  handle.createQuery("select 1").setQueryTimeout(5).mapTo(Integer.class).one())
          == 1;
    } catch (JdbiException problem) {
      outage.failedToConnect(problem);
      return false;
    }
  }

  /** How many connections are lent out at the moment. */
  int connectionsInUse() {
    return pool.getHikariPoolMXBean().getActiveConnections();
  }

  @Override
  public void close() {
    outage.close();
    pool.close();
    server.ifPresent(EmbeddedServer::close);
  }
}
