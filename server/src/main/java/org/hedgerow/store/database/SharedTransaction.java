package org.hedgerow.store.database;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Savepoint;
import org.jdbi.v3.core.ConnectionFactory;
import org.jspecify.annotations.Nullable;

/**
 * Connections that are all one, in whose transaction theirs are steps: a commit keeps a step, a
 * rollback takes it back to its savepoint, and only whoever owns the connection ends the whole. For
 * one thread.
 */
public final class SharedTransaction implements ConnectionFactory {
  private final Connection connection;

  /**
   * @param connection without auto-commit
   */
  public SharedTransaction(Connection connection) {
    this.connection = connection;
  }

  @Override
  public Connection openConnection() {
    return (Connection)
        Proxy.newProxyInstance(
            SharedTransaction.class.getClassLoader(),
            new Class<?>[] {Connection.class},
            new Step());
  }

  private final class Step implements InvocationHandler {
    private @Nullable Savepoint begun;

    @Override
    public @Nullable Object invoke(
        Object proxy, Method method, @Nullable Object @Nullable [] values) throws Throwable {
      switch (method.getName()) {
        case "setAutoCommit" -> autoCommit(values != null && Boolean.TRUE.equals(values[0]));
        case "commit" -> keep();
        case "rollback" -> takeBack();
        case "close", "setTransactionIsolation", "setReadOnly" -> {}
        case "getAutoCommit" -> {
          return begun == null;
        }
        default -> {
          return onShared(method, values);
        }
      }
      return null;
    }

    private void autoCommit(boolean on) throws SQLException {
      if (!on && begun == null) {
        begun = connection.setSavepoint();
      } else if (on) {
        keep();
      }
    }

    private void keep() throws SQLException {
      if (begun != null) {
        connection.releaseSavepoint(begun);
        begun = null;
      }
    }

    private void takeBack() throws SQLException {
      if (begun != null) {
        connection.rollback(begun);
        keep();
      }
    }

    private @Nullable Object onShared(Method method, @Nullable Object @Nullable [] values)
        throws Throwable {
      try {
        return method.invoke(connection, values);
      } catch (InvocationTargetException thrown) {
        throw thrown.getCause() == null ? thrown : thrown.getCause();
      }
    }
  }
}
