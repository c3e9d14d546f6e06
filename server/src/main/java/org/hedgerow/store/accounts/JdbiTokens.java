package org.hedgerow.store.accounts;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.TokenStore;
import org.hedgerow.operations.Role;
import org.hedgerow.store.database.BestEffort;
import org.hedgerow.store.database.Columns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** Tokens in their table. */
record JdbiTokens(Handle handle) implements TokenStore {
  private static final String COLUMNS =
      "t.id, t.account_id, t.label, t.role, t.made_at, t.expires_at, t.used_at";
  private static final String SELECT = "select " + COLUMNS + " from api_tokens t";

  @Override
  public int add(
      String secretHash,
      int accountId,
      String label,
      Role role,
      Instant madeAt,
      Instant expiresAt) {
    return handle
        .createQuery(
            "insert into api_tokens (secret_hash, account_id, label, role, made_at, expires_at)"
                + " values (:secretHash, :accountId, :label, :role, :madeAt, :expiresAt)"
                + " returning id")
        .bind("secretHash", secretHash)
        .bind("accountId", accountId)
        .bind("label", label)
        .bind("role", role.label())
        .bind("madeAt", madeAt)
        .bind("expiresAt", expiresAt)
        .mapTo(Integer.class)
        .one();
  }

  @Override
  public Optional<ApiToken> find(String secretHash) {
    return handle
        .createQuery(SELECT + " where secret_hash = :secretHash")
        .bind("secretHash", secretHash)
        .map(JdbiTokens::read)
        .findOne();
  }

  @Override
  public Optional<Held> held(String secretHash) {
    return JdbiAccounts.held(
        handle, "api_tokens", COLUMNS, secretHash, JdbiTokens::read, Held::new);
  }

  private static ApiToken read(ResultSet row, StatementContext context) throws SQLException {
    return new ApiToken(
        row.getInt("id"),
        row.getInt("account_id"),
        row.getString("label"),
        JdbiAccounts.role(row.getString("role")),
        Columns.instant(row, "made_at"),
        Columns.instant(row, "expires_at"),
        Columns.optionalInstant(row, "used_at"));
  }

  @Override
  public List<ApiToken> of(int accountId) {
    return handle
        .createQuery(SELECT + " where account_id = :accountId order by id")
        .bind("accountId", accountId)
        .map(JdbiTokens::read)
        .list();
  }

  @Override
  public void changeUsed(int id, Instant usedAt) {
    BestEffort.store(
        () ->
            handle.execute(
                "update api_tokens set used_at = greatest(used_at, ?) where id = ?", usedAt, id));
  }

  @Override
  public boolean remove(int accountId, int id) {
    return handle.execute("delete from api_tokens where account_id = ? and id = ?", accountId, id)
        > 0;
  }
}
