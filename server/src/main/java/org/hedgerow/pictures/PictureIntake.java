package org.hedgerow.pictures;

/**
 * Takes what somebody uploads and makes a picture of it that is safe to keep and to serve. PNG,
 * JPEG and SVG are recognised by what is in them; names and declared types aren't asked.
 *
 * <p>A PNG or JPEG is scaled down to at most 1,024 pixels on the longer side, turned upright, its
 * colours brought to sRGB, and written anew from its pixels: nothing else of the file remains. Of
 * an animation the first picture remains. An SVG is built anew from elements, attributes and values
 * that are known; what would run, fetch or move, and what can't be kept without changing the
 * picture, is refused by its name.
 *
 * <p>The same upload always gives the same picture, and a picture that was taken gives itself, up
 * to the losses of writing a JPEG again. Safe for use by several threads.
 */
public final class PictureIntake {

  /** The most that is read, in bytes. */
  public static final int MAX_BYTES = 5 * 1024 * 1024;

  private final RasterIntake rasters = new RasterIntake();

  /**
   * @throws UnusablePictureException if no picture can be made of it; the message says what to do
   */
  public CleanPicture take(byte[] upload) {
    if (upload.length > MAX_BYTES) {
      throw new UnusablePictureException(
          "The file has more than 5 MB. Make the picture smaller, 1,024 pixels on the longer side"
              + " are enough, and upload that.");
    }
    return switch (FileKind.of(upload)) {
      case PNG -> rasters.takePng(upload);
      case JPEG -> rasters.takeJpeg(upload);
      case SVG -> SvgIntake.take(upload);
    };
  }
}
