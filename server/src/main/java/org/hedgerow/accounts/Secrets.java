package org.hedgerow.accounts;

import java.security.SecureRandom;
import java.util.Base64;

/** Makes secrets of 256 random bits, in base64url: 43 characters that may stand in an address. */
public final class Secrets {
  private static final int BYTES = 32;

  private final SecureRandom random = new SecureRandom();

  public Secret fresh() {
    byte[] bytes = new byte[BYTES];
    random.nextBytes(bytes);
    return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
  }
}
