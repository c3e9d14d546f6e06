package org.hedgerow.web.page;

import static java.util.Objects.requireNonNull;

/** A file that pages need. */
final class Asset {

  private final String mediaType;
  private final byte[] bytes;
  private final String version;

  /**
   * @param version a checksum of the bytes, in hexadecimal digits
   */
  Asset(String mediaType, byte[] bytes, String version) {
    this.mediaType = requireNonNull(mediaType);
    this.bytes = bytes.clone();
    this.version = requireNonNull(version);
  }

  String mediaType() {
    return mediaType;
  }

  byte[] bytes() {
    return bytes.clone();
  }

  String version() {
    return version;
  }
}
