package org.hedgerow.pictures;

import java.nio.ByteBuffer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Counts what compressed data comes to without keeping it, and stops at the first byte too many: a
 * small file can inflate to a thousand times its size.
 */
final class InflatedLength {

  private static final int PIECE = 1 << 16;

  private final long expected;
  private final Inflater inflater = new Inflater();
  private final byte[] piece = new byte[PIECE];
  private long length;

  InflatedLength(long expected) {
    this.expected = expected;
  }

  /**
   * @throws UnusablePictureException if the data is damaged or comes to more than it should
   */
  void add(ByteBuffer compressed) {
    inflater.setInput(compressed);
    try {
      int inflated;
      do {
        inflated = inflater.inflate(piece);
        length += inflated;
        requireNoMore();
      } while (inflated > 0);
    } catch (DataFormatException damage) {
      throw PngFile.damaged();
    }
  }

  private void requireNoMore() {
    if (length > expected) {
      throw new UnusablePictureException(
          "This PNG holds more data than a picture of its size has. It was refused because such"
              + " files can stop a server. Save the picture as PNG again and upload that file.");
    }
  }

  /** Called once, after all the data. */
  void requireComplete() {
    boolean complete = length == expected && inflater.finished();
    inflater.end();
    if (!complete) {
      throw new UnusablePictureException(
          "Part of this PNG is missing. Save or copy the picture again and upload that file.");
    }
  }
}
