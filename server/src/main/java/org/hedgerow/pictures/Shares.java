package org.hedgerow.pictures;

/**
 * How the pixels of a line are shared out among the fewer pixels of a scaled line. Each falls into
 * one of them, or across the border to the next.
 */
final class Shares {

  private final int[] place;
  private final float[] here;
  private final float[] next;

  /**
   * @param to at most {@code from}
   */
  Shares(int from, int to) {
    this.place = new int[from];
    this.here = new float[from];
    this.next = new float[from];
    double scale = (double) to / from;
    for (int i = 0; i < from; i++) {
      share(i, scale, to - 1);
    }
  }

  private void share(int pixel, double scale, int last) {
    double start = pixel * scale;
    double end = start + scale;
    place[pixel] = Math.min((int) start, last);
    double border = place[pixel] + 1;
    boolean across = end > border && place[pixel] < last;
    next[pixel] = across ? (float) (end - border) : 0;
    here[pixel] = (float) scale - next[pixel];
  }

  /** The pixel of the scaled line that the start of this one falls into. */
  int place(int pixel) {
    return place[pixel];
  }

  /** How much of that place this pixel fills. */
  float here(int pixel) {
    return here[pixel];
  }

  /** How much of the place after it this pixel fills; 0 if nothing. */
  float next(int pixel) {
    return next[pixel];
  }
}
