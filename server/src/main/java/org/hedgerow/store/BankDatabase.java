package org.hedgerow.store;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.sql.DataSource;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.store.database.AdvisoryLock;
import org.hedgerow.store.database.ConnectionPool;
import org.hedgerow.store.database.ConnectionProbe;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.database.Outage;
import org.hedgerow.store.database.RecordMappers;
import org.hedgerow.store.database.SchemaMigration;
import org.hedgerow.store.database.SharedTransaction;
import org.hedgerow.store.database.StorageRoom;
import org.hedgerow.store.database.Transactions;
import org.hedgerow.store.embedded.EmbeddedServer;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.postgres.PostgresPlugin;

/**
 * The open database of a bank, its schema up to date. Safe for use by several threads. Closing it
 * returns every connection and stops the embedded server, if it has one.
 */
public final class BankDatabase implements AutoCloseable {
  private final DatabaseAddress address;
  private final DataSource beside;
  private final HikariDataSource pool;
  private final SchemaMigration migration;
  private final Jdbi jdbi;
  private final Transactions transactions;
  private final Jdbi patient;
  private final Optional<EmbeddedServer> server;
  private final Outage outage;

  private BankDatabase(DatabaseAddress address, Optional<EmbeddedServer> server) {
    ConnectionProbe.check(address);
    this.address = address;
    this.server = server;
    this.outage =
        new Outage(
            () -> ConnectionProbe.answers(address),
            server.map(EmbeddedServer::room).orElseGet(StorageRoom::elsewhere));
    this.beside = ConnectionProbe.source(address);
    this.migration = SchemaMigration.run(beside);
    this.pool = ConnectionPool.of(address);
    this.jdbi = prepared(Jdbi.create(pool));
    this.transactions = new Transactions(jdbi);
    this.patient = prepared(Jdbi.create(beside));
  }

  private static Jdbi prepared(Jdbi jdbi) {
    return jdbi.installPlugin(new PostgresPlugin()).registerRowMapper(new RecordMappers());
  }

  private BankDatabase(BankDatabase bank, Jdbi jdbi) {
    this.address = bank.address;
    this.server = bank.server;
    this.pool = bank.pool;
    this.migration = bank.migration;
    this.beside = bank.beside;
    this.outage = bank.outage;
    this.jdbi = jdbi;
    this.patient = jdbi;
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
  public static BankDatabase embedded(Path dataFolder, Path engine) {
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

  /**
   * Does work of many transactions in one, on a connection of its own: all of it is kept or, if it
   * fails, nothing. While another Hedgerow does such work this one waits.
   *
   * @param work given the bank as that one transaction sees it, for one thread
   * @param waiting run before waiting
   */
  public <R> R atOnce(Function<BankDatabase, R> work, Runnable waiting) {
    try (Connection connection = ConnectionProbe.connect(address)) {
      connection.setAutoCommit(false);
      Jdbi shared = prepared(Jdbi.create(new SharedTransaction(connection)));
      shared.useHandle(handle -> AdvisoryLock.DEMO.take(handle, waiting));
      R result = work.apply(new BankDatabase(this, shared));
      connection.commit();
      return result;
    } catch (SQLException problem) {
      throw new DatabaseUnavailableException(
          "The database doesn't take it, and nothing was changed: " + problem.getMessage(),
          problem);
    }
  }

  /** For what requests need: a statement may take a few seconds at most. */
  public Jdbi jdbi() {
    return jdbi;
  }

  public Transactions transactions() {
    return transactions;
  }

  /** Does something once the transaction that this thread is in has been committed, or at once. */
  public void afterwards(Runnable task) {
    transactions.afterwards(task);
  }

  /** For what may take long, such as filling a bank or reading it whole. */
  public Jdbi patient() {
    return patient;
  }

  /** Gives connections beside the pool, on which a statement may take long. */
  public DataSource dataSource() {
    return beside;
  }

  /** Whether it could be reached lately. */
  public Outage outage() {
    return outage;
  }

  public DatabaseAddress address() {
    return address;
  }

  /** What opening it did to the schema. */
  public SchemaMigration migration() {
    return migration;
  }

  /** Whether changes can be stored just now; takes a few seconds at most. */
  public boolean takesWrites() {
    return !outage.refusesWrites() && answers();
  }

  /** Whether the database answers just now; takes a few seconds at most. */
  public boolean answers() {
    try {
      return outage.told(
          () ->
              jdbi.withHandle(
                  handle -> handle.createQuery("select true").mapTo(Boolean.class).one()));
    } catch (UnavailableException | JdbiException silent) {
      return false;
    }
  }

  /** Whether a change has been going on for so long that it will never end; never waits. */
  public boolean isStuck() {
    return outage.writes().isStuck();
  }

  /**
   * Starts the embedded PostgreSQL again, should it end by itself, until this is closed.
   *
   * @param lost told why, in a sentence, when that doesn't succeed
   */
  public void keepRunning(Consumer<String> lost) {
    server.ifPresent(embedded -> embedded.keepRunning(lost));
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
