package org.hedgerow.store.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.Session;
import org.hedgerow.accounts.SessionStore;
import org.hedgerow.store.database.BestEffort;
import org.hedgerow.store.database.Columns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Sessions in their table. */
record JdbiSessions(Handle handle) implements SessionStore {
  private static final String COLUMNS = "t.id, t.account_id, t.client, t.started_at, t.seen_at";

  @Override
  public int add(String secretHash, int accountId, String client, Instant startedAt) {
    return handle
        .createQuery(
            "insert into sessions (secret_hash, account_id, client, started_at, seen_at)"
                + " values (:secretHash, :accountId, :client, :startedAt, :startedAt) returning id")
        .bind("secretHash", secretHash)
        .bind("accountId", accountId)
        .bind("client", client)
        .bind("startedAt", startedAt)
        .mapTo(Integer.class)
        .one();
  }

  @Override
  public Optional<Held> held(String secretHash) {
    return JdbiAccounts.held(
        handle, "sessions", COLUMNS, secretHash, JdbiSessions::read, Held::new);
  }

  private static Session read(ResultSet row, StatementContext context) throws SQLException {
    return new Session(
        row.getInt("id"),
        row.getInt("account_id"),
        row.getString("client"),
        Columns.instant(row, "started_at"),
        Columns.instant(row, "seen_at"));
  }

  @Override
  public List<Session> of(int accountId) {
    return handle
        .createQuery(
            "select "
                + COLUMNS
                + " from sessions t where account_id = :accountId order by seen_at desc, id desc")
        .bind("accountId", accountId)
        .map(JdbiSessions::read)
        .list();
  }

  /** Never back in time: servers' clocks differ a little. */
  @Override
  public void changeSeen(int id, Instant seenAt) {
    BestEffort.store(
        () ->
            handle.execute(
                "update sessions set seen_at = greatest(seen_at, ?) where id = ?", seenAt, id));
  }

  @Override
  public boolean remove(int accountId, int id) {
    return handle.execute("delete from sessions where account_id = ? and id = ?", accountId, id)
        > 0;
  }

  @Override
  public int removeAll(int accountId, Optional<Integer> but) {
    return handle.execute(
        "delete from sessions where account_id = ? and id <> ?", accountId, but.orElse(-1));
  }

  @Override
  public int removeStartedBefore(Instant moment) {
    return handle.execute("delete from sessions where started_at < ?", moment);
  }
}
