package org.hedgerow.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.operations.IdempotencyStore;
import org.hedgerow.store.database.Outage;
import org.hedgerow.store.database.Transactions;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Keeps answers by idempotency key in the bank's database. */
public final class JdbiIdempotencyStore implements IdempotencyStore {
  private static final Duration KEPT_FOR = Duration.ofHours(24);

  private final Transactions transactions;
  private final Outage outage;
  private final InstantSource clock;

  public JdbiIdempotencyStore(BankDatabase bank, InstantSource clock) {
    this.transactions = bank.transactions();
    this.outage = bank.outage();
    this.clock = clock;
  }

  private record Row(String requestHash, Kept answer) {}

  @Override
  public Outcome once(Request request, Supplier<Kept> work) {
    return outage.toldWriting(() -> transactions.asOne(handle -> once(handle, request, work)));
  }

  private Outcome once(Handle handle, Request request, Supplier<Kept> work) {
    if (!lock(handle, request)) {
      return new Outcome.Running();
    }
    Instant now = clock.instant();
    forget(handle, now.minus(KEPT_FOR));
    Optional<Row> row = find(handle, request);
    if (row.isPresent()) {
      return row.get().requestHash().equals(request.requestHash())
          ? new Outcome.Repeated(row.get().answer())
          : new Outcome.Reused();
    }
    add(handle, request, work.get(), now);
    return new Outcome.Done();
  }

  /** Until the transaction ends; whoever comes meanwhile needn't wait to learn that. */
  private static boolean lock(Handle handle, Request request) {
    return handle
        .createQuery("select pg_try_advisory_xact_lock(hashtextextended(:key, 0))")
        .bind("key", "idempotency-key %d %s".formatted(request.accountId(), request.keyHash()))
        .mapTo(Boolean.class)
        .one();
  }

  /** Leaves alone what another transaction forgets. */
  private static void forget(Handle handle, Instant before) {
    handle.execute(
        "delete from idempotency_keys where (account_id, key_hash) in (select account_id, key_hash"
            + " from idempotency_keys where at < ? for update skip locked)",
        before);
  }

  private static Optional<Row> find(Handle handle, Request request) {
    return handle
        .createQuery(
            "select request_hash, status, location, entity_tag, media_type, body"
                + " from idempotency_keys where account_id = :account and key_hash = :key")
        .bind("account", request.accountId())
        .bind("key", request.keyHash())
        .map(JdbiIdempotencyStore::row)
        .findOne();
  }

  private static Row row(ResultSet row, StatementContext context) throws SQLException {
    return new Row(
        row.getString("request_hash"),
        new Kept(
            row.getInt("status"),
            Optional.ofNullable(row.getString("location")),
            Optional.ofNullable(row.getString("entity_tag")),
            row.getString("media_type"),
            row.getString("body")));
  }

  private static void add(Handle handle, Request request, Kept answer, Instant now) {
    handle
        .createUpdate(
            """
            insert into idempotency_keys
              (account_id, key_hash, request_hash, status, location, entity_tag, media_type, body, at)
            values (:account, :key, :request, :status, :location, :tag, :type, :body, :now)
            """)
        .bind("account", request.accountId())
        .bind("key", request.keyHash())
        .bind("request", request.requestHash())
        .bind("status", answer.status())
        .bind("location", answer.location())
        .bind("tag", answer.entityTag())
        .bind("type", answer.mediaType())
        .bind("body", answer.body())
        .bind("now", now)
        .execute();
  }
}
