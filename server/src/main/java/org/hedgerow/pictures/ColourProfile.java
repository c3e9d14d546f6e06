package org.hedgerow.pictures;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.color.ICC_ProfileRGB;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.WritableRaster;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * What the colours of a file mean, where they aren't sRGB: telephones and many screens have a wider
 * range. Only small profiles of a matrix and curves are used, all that cameras and screens write;
 * whatever else a file carries is left aside, unread by the machinery of colour management.
 *
 * @param space of three colours
 */
record ColourProfile(ICC_ColorSpace space) {

  /** The profiles of common screens and cameras have 500 to 4,000 bytes. */
  private static final int MAX_BYTES = 16_384;

  private static final int MIN_BYTES = 128;
  private static final int LOOKUP_TABLE = 0x41324230;

  /** Red, green and blue, without alpha. */
  private static final int[] COLOURS = {0, 1, 2};

  /** Read from the chunk iCCP: a name, a zero, a zero for the method, the compressed profile. */
  static Optional<ColourProfile> compressed(ByteBuffer chunk) {
    while (chunk.hasRemaining() && chunk.get() != 0) {
      // past the name
    }
    return chunk.hasRemaining() && chunk.get() == 0 ? of(inflated(chunk)) : Optional.empty();
  }

  /** At most one byte more than may be used. */
  private static byte[] inflated(ByteBuffer compressed) {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(compressed);
      byte[] profile = new byte[MAX_BYTES + 1];
      int length = 0;
      int more;
      do {
        more = inflater.inflate(profile, length, profile.length - length);
        length += more;
      } while (more > 0);
      return Arrays.copyOf(profile, length);
    } catch (DataFormatException damage) {
      return new byte[0];
    } finally {
      inflater.end();
    }
  }

  /** Nothing if the profile can't be used; then colours are taken as sRGB. */
  static Optional<ColourProfile> of(byte[] profile) {
    if (profile.length < MIN_BYTES || profile.length > MAX_BYTES) {
      return Optional.empty();
    }
    try {
      return usable(ICC_Profile.getInstance(profile));
    } catch (IllegalArgumentException | CMMException damage) {
      return Optional.empty();
    }
  }

  private static Optional<ColourProfile> usable(ICC_Profile profile) {
    boolean usable =
        profile instanceof ICC_ProfileRGB
            && profile.getProfileClass() == ICC_Profile.CLASS_DISPLAY
            && profile.getColorSpaceType() == ColorSpace.TYPE_RGB
            && profile.getData(LOOKUP_TABLE) == null;
    return usable ? Optional.of(new ColourProfile(new ICC_ColorSpace(profile))) : Optional.empty();
  }

  /** The picture in the colours of screens (sRGB), with the same alpha. */
  BufferedImage toScreen(BufferedImage image) {
    BufferedImage converted =
        new BufferedImage(image.getWidth(), image.getHeight(), image.getType());
    image.copyData(converted.getRaster());
    try {
      new ColorConvertOp(space, ColorSpace.getInstance(ColorSpace.CS_sRGB), null)
          .filter(colours(image), colours(converted));
      return converted;
    } catch (CMMException unusable) {
      return image;
    }
  }

  private static WritableRaster colours(BufferedImage image) {
    return image
        .getRaster()
        .createWritableChild(0, 0, image.getWidth(), image.getHeight(), 0, 0, COLOURS);
  }
}
