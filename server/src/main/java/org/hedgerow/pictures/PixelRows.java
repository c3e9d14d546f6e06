package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;

/**
 * The rows of a decoded picture as alpha, red, green and blue of eight bits each. Samples are taken
 * as the file holds them: the colour model that the JDK gives to grey pictures is a linear one,
 * which makes them lighter than they were drawn.
 */
final class PixelRows {

  private static final int ALL_BITS = 0xff;

  private final Raster raster;
  private final ColorModel model;
  private final int[] samples;
  private final int[] argb;

  PixelRows(BufferedImage image) {
    this.raster = image.getRaster();
    this.model = image.getColorModel();
    this.samples = new int[raster.getWidth() * raster.getNumBands()];
    this.argb = new int[raster.getWidth()];
  }

  Dimensions size() {
    return new Dimensions(raster.getWidth(), raster.getHeight());
  }

  /** Good until the next one is asked for. */
  int[] row(int y) {
    raster.getPixels(0, y, raster.getWidth(), 1, samples);
    for (int x = 0; x < argb.length; x++) {
      argb[x] = model instanceof IndexColorModel palette ? palette.getRGB(samples[x]) : colour(x);
    }
    return argb;
  }

  private int colour(int x) {
    int bands = raster.getNumBands();
    int start = x * bands;
    boolean grey = bands < 3;
    boolean alpha = bands == 2 || bands == 4;
    int red = sample(start);
    int green = grey ? red : sample(start + 1);
    int blue = grey ? red : sample(start + 2);
    int opacity = alpha ? sample(start + bands - 1) : ALL_BITS;
    return opacity << 24 | red << 16 | green << 8 | blue;
  }

  /** The upper eight bits of sixteen, or all eight. */
  private int sample(int at) {
    return raster.getSampleModel().getSampleSize(0) == 16 ? samples[at] >>> 8 : samples[at];
  }
}
