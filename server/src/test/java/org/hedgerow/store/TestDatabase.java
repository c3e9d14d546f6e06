package org.hedgerow.store;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import org.hedgerow.store.database.DatabaseAddress;

/**
 * An empty database of its own for a test class, migrated, on a real PostgreSQL: the one at {@code
 * HEDGEROW_TEST_DATABASE_URL}, else one in a container where a Docker engine answers, else the
 * embedded one. Closing it drops it, and fails if a connection was not given back.
 */
public final class TestDatabase implements AutoCloseable {
  private final DatabaseAddress address;
  private final String name;
  private final BankDatabase bank;

  private TestDatabase(String name, DatabaseAddress address) {
    this.name = name;
    this.address = address;
    this.bank = BankDatabase.external(address);
  }

  public static TestDatabase open() {
    return create("");
  }

  /** Another with all that is in this one, which isn't used any more but to be copied. */
  public TestDatabase copy() {
    bank.close();
    return create(" template " + name);
  }

  private static TestDatabase create(String template) {
    String name = "hedgerow_test_" + UUID.randomUUID().toString().replace("-", "").substring(0, 12);
    execute("create database " + name + template);
    return new TestDatabase(name, TestServer.shared().database(name));
  }

  public BankDatabase bank() {
    return bank;
  }

  /** The one value that a query has. */
  public <T> T one(String query, Class<T> type) {
    return bank.jdbi().withHandle(handle -> handle.createQuery(query).mapTo(type).one());
  }

  /** For a program that connects by itself. */
  public DatabaseAddress address() {
    return address;
  }

  @Override
  public void close() {
    int lent = bank.connectionsInUse();
    bank.close();
    execute("drop database " + name + " with (force)");
    if (lent > 0) {
      throw new AssertionError(lent + " connections were not given back");
    }
  }

  private static void execute(String statement) {
    DatabaseAddress server = TestServer.shared().address();
    try (Connection connection =
            DriverManager.getConnection(
                server.url(), server.user().orElse(null), server.password().orElse(null));
        Statement sql = connection.createStatement()) {
      sql.execute(statement);
    } catch (SQLException problem) {
      throw new IllegalStateException("The test database server refuses: " + statement, problem);
    }
  }
}
