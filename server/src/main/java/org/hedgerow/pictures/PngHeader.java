package org.hedgerow.pictures;

import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Set;

/**
 * What the first chunk of a PNG says (PNG, third edition, 11.2.1).
 *
 * @param bits of a sample
 * @param colourType 0 grey, 2 colours, 3 palette, 4 grey and alpha, 6 colours and alpha
 * @param interlaced in the seven passes of Adam7
 */
record PngHeader(Dimensions size, int bits, int colourType, boolean interlaced) {

  static final int LENGTH = 13;
  static final int PALETTE = 3;

  private static final Map<Integer, Integer> SAMPLES = Map.of(0, 1, 2, 3, 3, 1, 4, 2, 6, 4);
  private static final Map<Integer, Set<Integer>> BITS =
      Map.of(
          0, Set.of(1, 2, 4, 8, 16),
          2, Set.of(8, 16),
          3, Set.of(1, 2, 4, 8),
          4, Set.of(8, 16),
          6, Set.of(8, 16));

  /** First column, first row, step of columns, step of rows of each pass of Adam7 (8.1). */
  private static final int[][] PASSES = {
    {0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4}, {1, 0, 2, 2}, {0, 1, 1, 2}
  };

  /**
   * @throws UnusablePictureException if it is too large, or nothing that a PNG can say
   */
  static PngHeader read(ByteBuffer chunk) {
    Dimensions size = Dimensions.declared(unsigned(chunk), unsigned(chunk));
    int bits = chunk.get();
    int colourType = chunk.get();
    int compression = chunk.get();
    int filter = chunk.get();
    int interlace = chunk.get();
    boolean known = BITS.getOrDefault(colourType, Set.of()).contains(bits);
    if (!known || compression != 0 || filter != 0 || interlace < 0 || interlace > 1) {
      throw PngFile.damaged();
    }
    return new PngHeader(size, bits, colourType, interlace == 1);
  }

  private static long unsigned(ByteBuffer chunk) {
    return Integer.toUnsignedLong(chunk.getInt());
  }

  /** How many bytes the compressed data must come to. */
  long inflatedBytes() {
    if (!interlaced) {
      return bytes(size.width(), size.height());
    }
    long bytes = 0;
    for (int[] pass : PASSES) {
      bytes += bytes(steps(size.width(), pass[0], pass[2]), steps(size.height(), pass[1], pass[3]));
    }
    return bytes;
  }

  private static int steps(int length, int first, int step) {
    return Math.max(0, (length - first + step - 1) / step);
  }

  /** Each row has a byte that names its filter in front. */
  private long bytes(long columns, long rows) {
    long rowBits = columns * SAMPLES.getOrDefault(colourType, 0) * bits;
    return columns == 0 ? 0 : rows * (1 + (rowBits + 7) / 8);
  }
}
