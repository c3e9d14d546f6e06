package org.hedgerow.store.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hedgerow.accounts.Link;
import org.hedgerow.accounts.LinkPurpose;
import org.hedgerow.accounts.LinkStore;
import org.hedgerow.operations.Role;
import org.jdbi.v3.core.Handle;

/** Links in their table. */
record JdbiLinks(Handle handle) implements LinkStore {
  private static final String SELECT =
      "select id, purpose, role, account_id, made_by, made_at, expires_at, spent_at from links";

  @Override
  public int add(
      String secretHash,
      LinkPurpose purpose,
      Role role,
      Optional<Integer> accountId,
      String madeBy,
      Instant madeAt,
      Instant expiresAt) {
    return handle
        .createQuery(
            "insert into links"
                + " (secret_hash, purpose, role, account_id, made_by, made_at, expires_at) values"
                + " (:secretHash, :purpose, :role, :accountId, :madeBy, :madeAt, :expiresAt)"
                + " returning id")
        .bind("secretHash", secretHash)
        .bind("purpose", purpose.name().toLowerCase(Locale.ROOT))
        .bind("role", role.label())
        .bind("accountId", accountId)
        .bind("madeBy", madeBy)
        .bind("madeAt", madeAt)
        .bind("expiresAt", expiresAt)
        .mapTo(Integer.class)
        .one();
  }

  @Override
  public Optional<Link> find(String secretHash) {
    return handle
        .createQuery(SELECT + " where secret_hash = :secretHash for update")
        .bind("secretHash", secretHash)
        .mapTo(Link.class)
        .findOne();
  }

  @Override
  public Optional<Link> find(int id) {
    return handle
        .createQuery(SELECT + " where id = :id for update")
        .bind("id", id)
        .mapTo(Link.class)
        .findOne();
  }

  @Override
  public List<Link> open(Instant now) {
    return handle
        .createQuery(SELECT + " where spent_at is null and expires_at > :now order by id")
        .bind("now", now)
        .mapTo(Link.class)
        .list();
  }

  @Override
  public void spend(int id, Instant now) {
    handle.execute("update links set spent_at = ? where id = ? and spent_at is null", now, id);
  }
}
