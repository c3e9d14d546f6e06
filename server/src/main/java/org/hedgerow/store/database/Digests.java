package org.hedgerow.store.database;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Digests that every Java has. */
public final class Digests {
  private Digests() {}

  public static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
