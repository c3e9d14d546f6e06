package org.hedgerow.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Role;

/** The tokens, within a transaction. */
public interface TokenStore {
  int add(
      String secretHash, int accountId, String label, Role role, Instant madeAt, Instant expiresAt);

  /** Expired or not. */
  Optional<ApiToken> find(String secretHash);

  /** The same with whose it is, active or not. */
  Optional<Held> held(String secretHash);

  /** A token and its owner. */
  record Held(ApiToken token, Account owner) {}

  /** Of one account, oldest first; expired or not. */
  List<ApiToken> of(int accountId);

  void changeUsed(int id, Instant usedAt);

  /**
   * @return whether it was there
   */
  boolean remove(int accountId, int id);
}
