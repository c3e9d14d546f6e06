package org.hedgerow.store.accounts;

import java.time.Instant;
import org.hedgerow.accounts.DeviceStore;
import org.jdbi.v3.core.Handle;

/** Known devices in their table. */
record JdbiDevices(Handle handle) implements DeviceStore {
  @Override
  public boolean isKnown(String secretHash, int accountId, Instant since) {
    return handle
        .createQuery(
            "select exists (select from known_devices where secret_hash = :secret"
                + " and account_id = :account and seen_at >= :since)")
        .bind("secret", secretHash)
        .bind("account", accountId)
        .bind("since", since)
        .mapTo(Boolean.class)
        .one();
  }

  @Override
  public void changeSecret(String secretHash, String freshHash) {
    handle.execute(
        "update known_devices set secret_hash = ? where secret_hash = ?", freshHash, secretHash);
  }

  @Override
  public void remember(String secretHash, int accountId, Instant at, int max) {
    handle.execute(
        "insert into known_devices (secret_hash, account_id, seen_at) values (?, ?, ?)"
            + " on conflict (secret_hash, account_id) do update set seen_at = excluded.seen_at",
        secretHash,
        accountId,
        at);
    handle.execute(
        "delete from known_devices where account_id = ? and secret_hash not in (select secret_hash"
            + " from known_devices where account_id = ? order by seen_at desc limit ?)",
        accountId,
        accountId,
        max);
  }
}
