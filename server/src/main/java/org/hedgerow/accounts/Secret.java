package org.hedgerow.accounts;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What only its owner knows: a session's id, a token, the end of a link. Whoever keeps records
 * keeps the hash alone. A plain SHA-256 is enough for 256 random bits, which nobody guesses.
 */
public record Secret(String text) {

  /** SHA-256 in lower-case hexadecimal, 64 digits. */
  public String hash() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Keeps it out of logs. */
  @Override
  public String toString() {
    return "a secret";
  }
}
