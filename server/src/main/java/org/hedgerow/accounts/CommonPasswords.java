package org.hedgerow.accounts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * The passwords that are tried first. Only the beginnings of their hashes are kept: some are words
 * that nobody should have to read. Of other passwords one in 15 thousand million is taken for one
 * of them.
 */
final class CommonPasswords {
  private static final String RESOURCE = "common-passwords/hashes";
  private static final int BYTES = 6;

  private static final CommonPasswords BUNDLED = new CommonPasswords(read());

  private final long[] sorted;

  private CommonPasswords(byte[] hashes) {
    this.sorted = new long[hashes.length / BYTES];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = number(hashes, i * BYTES);
    }
  }

  static CommonPasswords bundled() {
    return BUNDLED;
  }

  private static byte[] read() {
    try (InputStream stream = CommonPasswords.class.getResourceAsStream(RESOURCE)) {
      return Objects.requireNonNull(stream, RESOURCE).readAllBytes();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  int size() {
    return sorted.length;
  }

  /** Whatever its capitals and the space around it. */
  boolean contains(String password) {
    String plain =
        Normalizer.normalize(password, Normalizer.Form.NFKC).strip().toLowerCase(Locale.ROOT);
    return Arrays.binarySearch(sorted, number(sha256(plain), 0)) >= 0;
  }

  /** Six bytes as a number, which is never negative. */
  private static long number(byte[] bytes, int start) {
    return ByteBuffer.allocate(Long.BYTES).putShort((short) 0).put(bytes, start, BYTES).getLong(0);
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
