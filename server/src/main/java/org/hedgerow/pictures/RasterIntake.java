package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Picture;

/**
 * PNG and JPEG, made anew from their pixels. A large picture takes some 200 MB while it is decoded,
 * so that only a few are at the same time; others wait.
 */
final class RasterIntake {

  private static final int AT_THE_SAME_TIME = 2;
  private static final int MAX_WAIT_IN_SECONDS = 20;

  private final Semaphore places = new Semaphore(AT_THE_SAME_TIME, true);

  CleanPicture takePng(byte[] upload) {
    PngFile file = PngFile.read(upload);
    BufferedImage image =
        scaled(
            () ->
                RasterImages.decodedPng(file.essential().toArray()).orElseThrow(PngFile::damaged));
    BufferedImage clean = withColours(file.profile(), image);
    return CleanPicture.of(Picture.PNG, RasterImages.png(clean), size(clean));
  }

  CleanPicture takeJpeg(byte[] upload) {
    JpegFile file = JpegFile.read(upload);
    BufferedImage image =
        scaled(
            () ->
                RasterImages.decodedJpeg(file.essential().toArray())
                    .orElseThrow(JpegFile::damaged));
    BufferedImage clean = file.orientation().applied(withColours(file.profile(), image));
    return CleanPicture.of(Picture.JPEG, RasterImages.jpeg(clean), size(clean));
  }

  private BufferedImage scaled(Supplier<BufferedImage> decoding) {
    takePlace();
    try {
      return scaled(new PixelRows(decoding.get()));
    } finally {
      places.release();
    }
  }

  private void takePlace() {
    try {
      if (!places.tryAcquire(MAX_WAIT_IN_SECONDS, TimeUnit.SECONDS)) {
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

  private static BufferedImage scaled(PixelRows rows) {
    AreaScaler scaler = new AreaScaler(rows.size(), rows.size().fitted());
    for (int y = 0; y < rows.size().height(); y++) {
      scaler.take(rows.row(y));
    }
    return scaler.image();
  }

  private static BufferedImage withColours(Optional<ColourProfile> profile, BufferedImage image) {
    return profile.map(colours -> colours.toScreen(image)).orElse(image);
  }

  private static Dimensions size(BufferedImage image) {
    return new Dimensions(image.getWidth(), image.getHeight());
  }
}
