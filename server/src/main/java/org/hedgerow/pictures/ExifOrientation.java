package org.hedgerow.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * Reads one thing out of Exif: how the camera was held (Exif 2.32, tag 0112 of the first
 * directory). A library would read all of it, and what it reads comes from strangers.
 */
final class ExifOrientation {

  private static final String NAME = "Exif\0\0";
  private static final int TAG = 0x0112;
  private static final int SHORT = 3;
  private static final int ENTRY_BYTES = 12;

  private ExifOrientation() {}

  /** Nothing if the segment isn't Exif, doesn't say, or is damaged. */
  static Optional<Orientation> in(ByteBuffer segment) {
    if (!JpegReading.startsWith(segment, NAME)) {
      return Optional.empty();
    }
    ByteBuffer exif = segment.slice(NAME.length(), segment.remaining() - NAME.length());
    try {
      return firstDirectory(exif);
    } catch (IndexOutOfBoundsException damage) {
      return Optional.empty();
    }
  }

  private static Optional<Orientation> firstDirectory(ByteBuffer exif) {
    boolean littleEndian = exif.get(0) == 'I';
    exif.order(littleEndian ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = exif.getInt(4);
    int entries = Short.toUnsignedInt(exif.getShort(directory));
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY_BYTES;
      if (exif.getShort(entry) == TAG && exif.getShort(entry + 2) == SHORT) {
        return Orientation.of(exif.getShort(entry + 8));
      }
    }
    return Optional.empty();
  }
}
