package org.hedgerow.web.security;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Encrypts kept answers, some of which hold a token or a link, with AES-GCM under the client's key,
 * of which nothing but a hash is kept. That protects as well as the key is random.
 */
record ResponseEncryption(String key) {
  private static final String CIPHER = "AES/GCM/NoPadding";
  private static final int NONCE_BYTES = 12;
  private static final int TAG_BITS = 128;

  /** By which the key is found again. */
  String hash() {
    return HexFormat.of().formatHex(digest("name of " + key));
  }

  /** In Base64. */
  String seal(byte[] text) {
    byte[] nonce = new byte[NONCE_BYTES];
    new SecureRandom().nextBytes(nonce);
    byte[] sealed = run(Cipher.ENCRYPT_MODE, nonce, text);
    byte[] all = Arrays.copyOf(nonce, NONCE_BYTES + sealed.length);
    System.arraycopy(sealed, 0, all, NONCE_BYTES, sealed.length);
    return Base64.getEncoder().encodeToString(all);
  }

  byte[] open(String sealed) {
    byte[] all = Base64.getDecoder().decode(sealed);
    return run(
        Cipher.DECRYPT_MODE,
        Arrays.copyOf(all, NONCE_BYTES),
        Arrays.copyOfRange(all, NONCE_BYTES, all.length));
  }

  private byte[] run(int mode, byte[] nonce, byte[] input) {
    try {
      Cipher cipher = Cipher.getInstance(CIPHER);
      cipher.init(
          mode,
          new SecretKeySpec(digest("seal of " + key), "AES"),
          new GCMParameterSpec(TAG_BITS, nonce));
      return cipher.doFinal(input);
    } catch (GeneralSecurityException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8));
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
