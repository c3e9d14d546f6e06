package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.Optional;

/**
 * The header and the chunks of a PNG (PNG, third edition, 5.3), checked before anything is decoded.
 *
 * @param profile the colour profile, if it is one that can be used
 */
record PngFile(Optional<ColourProfile> profile) {

  static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private static final int CHECKSUM_BYTES = 4;

  /**
   * @throws UnusablePictureException if it is too large, damaged or cut short
   */
  static PngFile read(byte[] upload) {
    try {
      return read(ByteBuffer.wrap(upload).position(SIGNATURE.length));
    } catch (BufferUnderflowException cutShort) {
      throw new UnusablePictureException(
          "The end of this PNG is missing. Save or copy the picture again and upload that file.",
          cutShort);
    }
  }

  /** There may be one profile; of thousands the first is read. */
  private static PngFile read(ByteBuffer file) {
    requireUsable(chunk(file));
    Optional<ByteBuffer> profile = Optional.empty();
    Chunk chunk = chunk(file);
    while (!chunk.name().equals("IEND")) {
      if (chunk.name().equals("IHDR")) {
        throw damaged();
      }
      if (profile.isEmpty() && chunk.name().equals("iCCP")) {
        profile = Optional.of(chunk.content());
      }
      chunk = chunk(file);
    }
    return new PngFile(profile.flatMap(ColourProfile::compressed));
  }

  private record Chunk(String name, ByteBuffer content) {}

  private static Chunk chunk(ByteBuffer file) {
    int length = file.getInt();
    byte[] name = new byte[4];
    file.get(name);
    if (length < 0) {
      throw damaged();
    }
    if (length > file.remaining() - CHECKSUM_BYTES) {
      throw new BufferUnderflowException();
    }
    ByteBuffer content = file.slice(file.position(), length);
    file.position(file.position() + length + CHECKSUM_BYTES);
    return new Chunk(new String(name, ISO_8859_1), content);
  }

  private static void requireUsable(Chunk header) {
    if (!header.name().equals("IHDR") || header.content().remaining() < 2 * Integer.BYTES) {
      throw damaged();
    }
    long width = Integer.toUnsignedLong(header.content().getInt());
    Dimensions.declared(width, Integer.toUnsignedLong(header.content().getInt()));
  }

  static UnusablePictureException damaged() {
    return new UnusablePictureException(
        "This PNG is damaged and can't be read. Open the picture in a drawing program, save it as"
            + " PNG again and upload that file.");
  }

  static UnusablePictureException incomplete() {
    return new UnusablePictureException(
        "Part of this PNG is missing. Save or copy the picture again and upload that file.");
  }
}
