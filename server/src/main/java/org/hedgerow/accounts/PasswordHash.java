package org.hedgerow.accounts;

/** How passwords are kept. Safe for use by several threads. */
public interface PasswordHash {
  /** Something from which the password can't be found; other each time. */
  String of(String password);

  /** Whether a hash was made of this password. */
  boolean fits(String password, String hash);
}
