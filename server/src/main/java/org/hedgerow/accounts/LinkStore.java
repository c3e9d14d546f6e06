package org.hedgerow.accounts;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Role;

/** The links, within a transaction. */
public interface LinkStore {
  /**
   * @param accountId see {@link Link#accountId()}
   */
  int add(
      String secretHash,
      LinkPurpose purpose,
      Role role,
      Optional<Integer> accountId,
      String madeBy,
      Instant madeAt,
      Instant expiresAt);

  /** Open or not. No other transaction can spend it until this one ends. */
  Optional<Link> find(String secretHash);

  /** Open or not, with the same promise. */
  Optional<Link> find(int id);

  /** Neither spent nor expired, oldest first. */
  List<Link> open(Instant now);

  /** It can't be used any more. */
  void spend(int id, Instant now);
}
