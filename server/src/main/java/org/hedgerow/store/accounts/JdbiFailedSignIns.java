package org.hedgerow.store.accounts;

import java.time.Instant;
import org.hedgerow.accounts.FailedSignInStore;
import org.hedgerow.accounts.FailedSignIns;
import org.jdbi.v3.core.Handle;

/** Attempts to sign in that did not succeed, in their table. */
record JdbiFailedSignIns(Handle handle) implements FailedSignInStore {

  /** The update that changes nothing locks the row, whoever made it. */
  @Override
  public FailedSignIns lock(String subject, Instant now) {
    return handle
        .createQuery(
            "insert into sign_in_failures (subject, count, last) values (:subject, 0, :now)"
                + " on conflict (subject) do update set subject = excluded.subject"
                + " returning subject, count, last")
        .bind("subject", subject)
        .bind("now", now)
        .mapTo(FailedSignIns.class)
        .one();
  }

  @Override
  public void save(FailedSignIns failures) {
    handle.execute(
        "update sign_in_failures set count = ?, last = ? where subject = ?",
        failures.count(),
        failures.last(),
        failures.subject());
  }

  @Override
  public void remove(String subject) {
    handle.execute("delete from sign_in_failures where subject = ?", subject);
  }

  @Override
  public void removeStartingWith(String prefix) {
    handle.execute("delete from sign_in_failures where starts_with(subject, ?)", prefix);
  }

  /** Leaves alone what another transaction works on, and so never waits. */
  @Override
  public int keepNewest(int max) {
    return handle.execute(
        "delete from sign_in_failures where subject in (select subject from sign_in_failures"
            + " where last <= (select last from sign_in_failures order by last desc offset ? limit 1)"
            + " for update skip locked)",
        max);
  }

  /** Leaves alone what another transaction works on, and so never waits. */
  @Override
  public int removeBefore(Instant moment) {
    return handle.execute(
        "delete from sign_in_failures where subject in"
            + " (select subject from sign_in_failures where last < ? for update skip locked)",
        moment);
  }
}
