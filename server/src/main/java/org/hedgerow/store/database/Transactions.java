package org.hedgerow.store.database;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionException;
import org.jspecify.annotations.Nullable;

/**
 * Transactions, of which several in a row on one thread can be made one. Each then becomes a
 * savepoint: if it fails, only what it did is undone. Safe for use by several threads.
 */
public final class Transactions {
  private static final String STEP = "step";

  private final Jdbi jdbi;

  @SuppressWarnings("ThreadLocalUsage") // one for each database, not for each object
  private final ThreadLocal<@Nullable Whole> current = new ThreadLocal<>();

  private record Whole(Handle handle, List<Runnable> afterwards) {}

  public Transactions(Jdbi jdbi) {
    this.jdbi = jdbi;
  }

  /** Does some work in a transaction of its own, or as a step of the one that this thread is in. */
  public <R> R run(Function<Handle, R> work) {
    Whole whole = current.get();
    return whole == null ? jdbi.inTransaction(work::apply) : step(whole.handle(), work);
  }

  /** Does some work without a transaction, or within the one that this thread is in. */
  public <R> R read(Function<Handle, R> work) {
    Whole whole = current.get();
    return whole == null ? jdbi.withHandle(work::apply) : work.apply(whole.handle());
  }

  private static <R> R step(Handle handle, Function<Handle, R> work) {
    handle.savepoint(STEP);
    try {
      R result = work.apply(handle);
      handle.releaseSavepoint(STEP);
      return result;
    } catch (RuntimeException failure) {
      rollBack(handle, failure);
      throw failure;
    }
  }

  /** If the connection itself was lost, the first failure says so, and the whole is rolled back. */
  private static void rollBack(Handle handle, RuntimeException failure) {
    try {
      handle.rollbackToSavepoint(STEP);
    } catch (TransactionException lost) {
      failure.addSuppressed(lost);
    }
  }

  /** Makes one transaction of all that this thread does meanwhile. */
  public <R> R asOne(Function<Handle, R> work) {
    List<Runnable> afterwards = new ArrayList<>();
    R result =
        jdbi.inTransaction(
            handle -> during(new Whole(handle, afterwards), () -> work.apply(handle)));
    afterwards.forEach(Runnable::run);
    return result;
  }

  private <R> R during(Whole whole, Supplier<R> work) {
    current.set(whole);
    try {
      return work.get();
    } finally {
      current.remove();
    }
  }

  /** Does something once the transaction that this thread is in has been committed, or at once. */
  public void afterwards(Runnable task) {
    Whole whole = current.get();
    if (whole == null) {
      task.run();
    } else {
      whole.afterwards().add(task);
    }
  }
}
