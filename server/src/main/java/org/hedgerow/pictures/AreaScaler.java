package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * Scales a picture down, row by row as it comes: every new pixel is the mean of the area that it
 * covers, weighed by how opaque it is, so that no colour bleeds in from what can't be seen.
 */
final class AreaScaler {

  private static final int CHANNELS = 4;
  private static final int OPAQUE = 0xff;

  private final Dimensions to;
  private final Shares columns;
  private final Shares rows;
  private final float[] narrowed;
  private final float[] sums;
  private int rowsTaken;

  /**
   * @param to nowhere larger than {@code from}
   */
  AreaScaler(Dimensions from, Dimensions to) {
    this.to = to;
    this.columns = new Shares(from.width(), to.width());
    this.rows = new Shares(from.height(), to.height());
    this.narrowed = new float[to.width() * CHANNELS];
    this.sums = new float[to.height() * narrowed.length];
  }

  /**
   * @param argb the next row from the top: alpha, red, green and blue of each pixel
   */
  void take(int[] argb) {
    narrow(argb);
    int place = rows.place(rowsTaken);
    add(place, rows.here(rowsTaken));
    if (rows.next(rowsTaken) > 0) {
      add(place + 1, rows.next(rowsTaken));
    }
    rowsTaken++;
  }

  private void narrow(int[] argb) {
    Arrays.fill(narrowed, 0);
    for (int x = 0; x < argb.length; x++) {
      int at = columns.place(x) * CHANNELS;
      add(argb[x], at, columns.here(x));
      if (columns.next(x) > 0) {
        add(argb[x], at + CHANNELS, columns.next(x));
      }
    }
  }

  private void add(int argb, int at, float share) {
    float alpha = (argb >>> 24) * share;
    narrowed[at] += alpha;
    narrowed[at + 1] += (argb >> 16 & 0xff) * alpha;
    narrowed[at + 2] += (argb >> 8 & 0xff) * alpha;
    narrowed[at + 3] += (argb & 0xff) * alpha;
  }

  private void add(int row, float share) {
    int start = row * narrowed.length;
    for (int i = 0; i < narrowed.length; i++) {
      sums[start + i] += narrowed[i] * share;
    }
  }

  /** The whole picture, without alpha if all of it is opaque; called after the last row. */
  BufferedImage image() {
    int[] pixels = pixels();
    boolean opaque = Arrays.stream(pixels).allMatch(argb -> argb >>> 24 == OPAQUE);
    int type = opaque ? BufferedImage.TYPE_INT_RGB : BufferedImage.TYPE_INT_ARGB;
    BufferedImage image = new BufferedImage(to.width(), to.height(), type);
    image.setRGB(0, 0, to.width(), to.height(), pixels, 0, to.width());
    return image;
  }

  private int[] pixels() {
    int[] pixels = new int[sums.length / CHANNELS];
    for (int i = 0; i < pixels.length; i++) {
      pixels[i] = pixel(i * CHANNELS);
    }
    return pixels;
  }

  private int pixel(int at) {
    float alpha = sums[at];
    int rounded = Math.round(alpha);
    return rounded == 0
        ? 0
        : rounded << 24
            | colour(sums[at + 1], alpha) << 16
            | colour(sums[at + 2], alpha) << 8
            | colour(sums[at + 3], alpha);
  }

  private static int colour(float sum, float alpha) {
    return Math.min(255, Math.round(sum / alpha));
  }
}
