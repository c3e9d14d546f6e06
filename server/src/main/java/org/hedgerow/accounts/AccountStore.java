package org.hedgerow.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Role;

/** The accounts, within a transaction. */
public interface AccountStore {
  Optional<Account> find(int id);

  /**
   * @param name as {@link Account#name()} has it
   */
  Optional<Account> find(String name);

  /** By name. */
  List<Account> all();

  /** Makes an active account; none if the name is taken. */
  Optional<Account> add(
      String name, String displayName, Role role, String passwordHash, Instant since);

  String passwordHash(int id);

  void changeDisplayName(int id, String displayName);

  void changePasswordHash(int id, String passwordHash);

  void changeRole(int id, Role role);

  void changeActive(int id, boolean active);

  /**
   * How many administrators are active. Until the transaction ends, no other can change that or
   * ask.
   */
  int lockAdministrators();
}
