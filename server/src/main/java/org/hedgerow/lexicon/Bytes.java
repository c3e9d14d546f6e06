package org.hedgerow.lexicon;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/** The content of a file. Immutable; equal if every byte is. */
public final class Bytes implements PictureContent {

  private static final int FINGERPRINT_BYTES = 6;

  private final byte[] content;

  private Bytes(byte[] content) {
    this.content = content;
  }

  /** A copy: what is done to the array later changes nothing here. */
  public static Bytes of(byte[] content) {
    return new Bytes(content.clone());
  }

  /** A copy. */
  public byte[] toArray() {
    return content.clone();
  }

  /** This, which is in memory already. */
  @Override
  public Bytes bytes() {
    return this;
  }

  public int size() {
    return content.length;
  }

  /** Twelve hexadecimal digits that change with the content: the start of its SHA-256. */
  public String fingerprint() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      return HexFormat.of().formatHex(digest, 0, FINGERPRINT_BYTES);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Bytes bytes && Arrays.equals(content, bytes.content);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(content);
  }

  @Override
  public String toString() {
    return "%d bytes".formatted(content.length);
  }
}
