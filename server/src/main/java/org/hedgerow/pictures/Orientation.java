package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Optional;

/** How a stored picture must be turned to stand upright. */
enum Orientation {
  UPRIGHT(1, false),
  MIRRORED(2, false),
  HALF_TURN(3, false),
  UPSIDE_DOWN_MIRRORED(4, false),
  ROWS_AND_COLUMNS_SWAPPED(5, true),
  QUARTER_TURN(6, true),
  ROWS_AND_COLUMNS_SWAPPED_BACKWARDS(7, true),
  THREE_QUARTER_TURN(8, true);

  private final int number;
  private final boolean onItsSide;

  Orientation(int number, boolean onItsSide) {
    this.number = number;
    this.onItsSide = onItsSide;
  }

  /** By the number that Exif gives it. */
  static Optional<Orientation> of(int number) {
    return Arrays.stream(values()).filter(one -> one.number == number).findFirst();
  }

  /** The picture upright. */
  BufferedImage applied(BufferedImage stored) {
    if (this == UPRIGHT) {
      return stored;
    }
    Dimensions size = new Dimensions(stored.getWidth(), stored.getHeight());
    Dimensions upright = onItsSide ? size.turned() : size;
    BufferedImage image = new BufferedImage(upright.width(), upright.height(), stored.getType());
    for (int y = 0; y < upright.height(); y++) {
      for (int x = 0; x < upright.width(); x++) {
        image.setRGB(x, y, stored(stored, x, y));
      }
    }
    return image;
  }

  /** The colour of a place of the upright picture. */
  private int stored(BufferedImage image, int x, int y) {
    int right = image.getWidth() - 1;
    int bottom = image.getHeight() - 1;
    return switch (this) {
      case UPRIGHT -> image.getRGB(x, y);
      case MIRRORED -> image.getRGB(right - x, y);
      case HALF_TURN -> image.getRGB(right - x, bottom - y);
      case UPSIDE_DOWN_MIRRORED -> image.getRGB(x, bottom - y);
      case ROWS_AND_COLUMNS_SWAPPED -> image.getRGB(y, x);
      case QUARTER_TURN -> image.getRGB(y, bottom - x);
      case ROWS_AND_COLUMNS_SWAPPED_BACKWARDS -> image.getRGB(right - y, bottom - x);
      case THREE_QUARTER_TURN -> image.getRGB(right - y, x);
    };
  }
}
