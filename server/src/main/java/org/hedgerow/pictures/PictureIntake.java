package org.hedgerow.pictures;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

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
 * to the losses of writing a JPEG again. Safe for use by several threads: a picture can take 60 MB,
 * so that only two are worked on at the same time, and others wait.
 */
public final class PictureIntake {

  /** The most that is read, in bytes. */
  public static final int MAX_BYTES = 5 * 1024 * 1024;

  private static final int AT_THE_SAME_TIME = 2;
  private static final int MAX_WAIT_IN_SECONDS = 20;
  private static final Semaphore PLACES = new Semaphore(AT_THE_SAME_TIME, /* fair= */ true);

  /**
   * @throws UnusablePictureException if no picture can be made of it; the message says what to do
   */
  public CleanPicture take(byte[] upload) {
    if (upload.length > MAX_BYTES) {
      throw new UnusablePictureException(
          "The file has more than 5 MB. Make the picture smaller, 1,024 pixels on the longer side"
              + " are enough, and upload that.");
    }
    FileKind kind = FileKind.of(upload);
    takePlace();
    try {
      return switch (kind) {
        case PNG -> RasterIntake.takePng(upload);
        case JPEG -> RasterIntake.takeJpeg(upload);
        case SVG -> SvgIntake.take(upload);
      };
    } finally {
      PLACES.release();
    }
  }

  private static void takePlace() {
    try {
      if (!PLACES.tryAcquire(MAX_WAIT_IN_SECONDS, TimeUnit.SECONDS)) {
        throw busy();
      }
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
      throw busy();
    }
  }

  private static UnusablePictureException busy() {
    return new UnusablePictureException(
        "Many people are sending pictures just now, and this one had to wait too long. Send it"
            + " again in a minute.");
  }
}
