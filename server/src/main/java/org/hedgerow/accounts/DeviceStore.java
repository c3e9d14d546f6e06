package org.hedgerow.accounts;

import java.time.Instant;

/** The devices on which people have signed in, within a transaction. */
public interface DeviceStore {
  /** Whether somebody has signed in to an account on a device since a moment. */
  boolean isKnown(String secretHash, int accountId, Instant since);

  /** Gives a device another secret, for all accounts that have been used on it. */
  void changeSecret(String secretHash, String freshHash);

  /**
   * Keeps that somebody has signed in; of an account, only the devices used last are kept.
   *
   * @param max how many
   */
  void remember(String secretHash, int accountId, Instant at, int max);
}
