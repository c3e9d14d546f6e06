package org.hedgerow.accounts;

/** Hides nothing and takes no time, for tests that are about other things. */
public final class PlainHash implements PasswordHash {
  private static final String START = "$argon2id$plain$";

  @Override
  public String of(String password) {
    return START + password;
  }

  @Override
  public boolean fits(String password, String hash) {
    return hash.equals(START + password);
  }
}
