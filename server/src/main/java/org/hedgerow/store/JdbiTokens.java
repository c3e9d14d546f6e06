package org.hedgerow.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.Role;
import org.hedgerow.accounts.TokenStore;
import org.jdbi.v3.core.Handle;

/** Tokens in their table. */
record JdbiTokens(Handle handle) implements TokenStore {
  private static final String SELECT =
      "select id, account_id, label, role, made_at, expires_at, used_at from api_tokens";

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
        .mapTo(ApiToken.class)
        .findOne();
  }

  @Override
  public List<ApiToken> of(int accountId) {
    return handle
        .createQuery(SELECT + " where account_id = :accountId order by id")
        .bind("accountId", accountId)
        .mapTo(ApiToken.class)
        .list();
  }

  @Override
  public void changeUsed(int id, Instant usedAt) {
    handle.execute("update api_tokens set used_at = greatest(used_at, ?) where id = ?", usedAt, id);
  }

  @Override
  public boolean remove(int accountId, int id) {
    return handle.execute("delete from api_tokens where account_id = ? and id = ?", accountId, id)
        > 0;
  }
}
