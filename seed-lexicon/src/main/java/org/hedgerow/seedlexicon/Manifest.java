package org.hedgerow.seedlexicon;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The SHA-256 of every seed file by its path, in the format of {@code sha256sum}. */
record Manifest(SortedMap<String, String> checksums) {
  static final String FILE = "manifest.sha256";
  private static final String SEPARATOR = "  ";

  static Manifest parse(byte[] content) {
    SortedMap<String, String> checksums = new TreeMap<>();
    int number = 0;
    for (String line : new String(content, UTF_8).lines().toList()) {
      Map.Entry<String, String> entry = entry(line, ++number);
      checksums.put(entry.getKey(), entry.getValue());
    }
    return new Manifest(checksums);
  }

  private static Map.Entry<String, String> entry(String line, int number) {
    int separator = line.indexOf(SEPARATOR);
    if (separator != 64) {
      throw DamagedSeedException.malformed(FILE, number, "which is no checksum and path");
    }
    return Map.entry(line.substring(separator + SEPARATOR.length()), line.substring(0, separator));
  }

  /** Answers the content it was given, or throws if it isn't what the manifest promises. */
  byte[] verified(String path, byte[] content) {
    String expected = checksums.get(path);
    if (expected == null) {
      throw DamagedSeedException.unlisted(path);
    }
    if (!expected.equals(checksum(content))) {
      throw DamagedSeedException.changed(path);
    }
    return content;
  }

  static String checksum(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256", e);
    }
  }
}
