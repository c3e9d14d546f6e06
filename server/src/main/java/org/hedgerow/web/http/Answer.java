package org.hedgerow.web.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.hedgerow.web.edge.Gzip;

/**
 * A finished answer to a read. The bytes are never changed once they are in here.
 *
 * @param entityTag with its quotes
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and never changed
public record Answer(
    byte[] bytes, String contentType, String entityTag, boolean gzipped, Extent extent) {

  private static final int TAG_CHARACTERS = 12;

  /** An answer from an edition, tagged by what it says. */
  public static Answer of(Extent extent, Format format, byte[] bytes) {
    return new Answer(bytes, format.contentType(), tag(extent.edition(), bytes), false, extent);
  }

  /** An answer in a format of its own. */
  public static Answer of(int edition, byte[] bytes, String contentType) {
    return new Answer(bytes, contentType, tag(edition, bytes), false, Extent.whole(edition));
  }

  private static String tag(int edition, byte[] bytes) {
    return "\"" + edition + "-" + digest(bytes) + "\"";
  }

  /** The same answer, compressed: another representation, which needs a tag of its own. */
  Answer compressed() {
    return new Answer(Gzip.compress(bytes), contentType, Gzip.tag(entityTag), true, extent);
  }

  private static String digest(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return Base64.getUrlEncoder()
          .withoutPadding()
          .encodeToString(digest)
          .substring(0, TAG_CHARACTERS);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
