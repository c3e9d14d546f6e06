package org.hedgerow.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Account;

/** The sessions, within a transaction. */
public interface SessionStore {
  int add(String secretHash, int accountId, String client, Instant startedAt);

  /** Whether the session has expired, its account, and whether that account is active. */
  Optional<Held> held(String secretHash);

  /** A session and who is signed in. */
  record Held(Session session, Account owner) {}

  /** Of one account, the last used first; over or not. */
  List<Session> of(int accountId);

  void changeSeen(int id, Instant seenAt);

  /**
   * @return whether it was there
   */
  boolean remove(int accountId, int id);

  /** Ends every session of the account except the given one. */
  int removeAll(int accountId, Optional<Integer> but);

  /** Tidies up. */
  int removeStartedBefore(Instant moment);
}
