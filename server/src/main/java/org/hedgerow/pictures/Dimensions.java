package org.hedgerow.pictures;

/**
 * How large a picture is.
 *
 * @param width in pixels, at least 1
 * @param height likewise
 */
record Dimensions(int width, int height) {

  static final int MAX_PIXELS = 20_000_000;
  static final int MAX_SIDE = 8_000;

  /** The least a side may have, also after scaling down: less can't be made out in print. */
  static final int SHORTEST_SIDE = 64;

  /** The most a side has after scaling down: 8 cm at 300 dots per inch. */
  static final int SCALED_SIDE = 1_024;

  /**
   * As a file declares it, before anything is made of it.
   *
   * @throws UnusablePictureException if a side is nothing, too short or too long, or there are too
   *     many pixels
   */
  static Dimensions declared(long width, long height) {
    if (width < 1 || height < 1) {
      throw new UnusablePictureException(
          "The file says that its picture has no width or no height, so it is damaged. Save the"
              + " picture again and upload that file.");
    }
    if (Math.max(width, height) > MAX_SIDE || width * height > MAX_PIXELS) {
      throw new UnusablePictureException(
          "The picture has %,d × %,d pixels. At most 20 million in all and 8,000 on a side can be"
                  .formatted(width, height)
              + " taken. Make it smaller, 1,024 pixels are enough, and upload that.");
    }
    Dimensions declared = new Dimensions((int) width, (int) height);
    declared.requireLargeEnough();
    return declared;
  }

  private void requireLargeEnough() {
    if (Math.min(width, height) < SHORTEST_SIDE) {
      throw new UnusablePictureException(
          "The picture has %,d × %,d pixels, which is too small to print. Upload one with at least"
                  .formatted(width, height)
              + " 64 pixels on each side; 500 and more are better.");
    }
    Dimensions fitted = fitted();
    if (Math.min(fitted.width(), fitted.height()) < SHORTEST_SIDE) {
      throw new UnusablePictureException(
          "The picture has %,d × %,d pixels, which is too long and narrow for a card. Cut out the"
                  .formatted(width, height)
              + " part that shows the word and upload that.");
    }
  }

  /** As it is kept: the same shape, no side longer than {@link #SCALED_SIDE}. */
  Dimensions fitted() {
    int longer = Math.max(width, height);
    return longer <= SCALED_SIDE
        ? this
        : new Dimensions(scaled(width, longer), scaled(height, longer));
  }

  private static int scaled(int side, int longer) {
    return Math.max(1, Math.round((float) side * SCALED_SIDE / longer));
  }
}
