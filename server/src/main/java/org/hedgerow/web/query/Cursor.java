package org.hedgerow.web.query;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.zip.CRC32C;

/**
 * A place in a list: the words of one edition that answer one question. A client may only hand it
 * back; what is in it is nobody's business but ours.
 *
 * @param offset how many words come before
 * @param question a checksum of the question, so that a cursor isn't taken to another list
 */
public record Cursor(int edition, int offset, int question) {

  private static final int BYTES = 3 * Integer.BYTES;
  private static final int CHARACTERS = 16;

  public static Cursor to(int edition, int offset, QueryString list) {
    CRC32C checksum = new CRC32C();
    checksum.update(list.toString().getBytes(StandardCharsets.UTF_8));
    return new Cursor(edition, offset, (int) checksum.getValue());
  }

  /** The cursor in a text; empty if there is none. */
  static Optional<Cursor> read(String text) {
    if (text.length() != CHARACTERS) {
      return Optional.empty();
    }
    try {
      ByteBuffer bytes = ByteBuffer.wrap(Base64.getUrlDecoder().decode(text));
      return bytes.remaining() == BYTES
          ? Optional.of(new Cursor(bytes.getInt(), bytes.getInt(), bytes.getInt()))
          : Optional.empty();
    } catch (IllegalArgumentException notBase64) {
      return Optional.empty();
    }
  }

  /** Whether it is a place in the same list as another. */
  boolean sameList(Cursor other) {
    return edition == other.edition && question == other.question && offset > 0;
  }

  @Override
  public String toString() {
    ByteBuffer bytes = ByteBuffer.allocate(BYTES).putInt(edition).putInt(offset).putInt(question);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.array());
  }
}
