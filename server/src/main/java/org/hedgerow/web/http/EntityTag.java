package org.hedgerow.web.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** Names the state of something by what is said of it. */
public final class EntityTag {
  private static final int CHARACTERS = 16;

  private EntityTag() {}

  /** With its quotes. */
  public static String of(byte[] said) {
    return "\"" + digest(said).substring(0, CHARACTERS) + "\"";
  }

  private static String digest(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new String(Base64.getUrlEncoder().encode(digest), StandardCharsets.US_ASCII);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
