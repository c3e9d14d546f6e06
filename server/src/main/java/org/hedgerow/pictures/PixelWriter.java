package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.hedgerow.lexicon.Picture;

/** Encodes pictures, in memory alone. */
final class PixelWriter {

  /** From 0 to 1; edges of drawings stay clean. */
  private static final float QUALITY = 0.9f;

  private static final int OPAQUE = 0xff;

  private PixelWriter() {}

  /** Without alpha if all of it is opaque. */
  static CleanPicture png(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    BufferedImage plain = isOpaque(image) ? withoutAlpha(image) : image;
    return encoded(Picture.PNG, writer, writer.getDefaultWriteParam(), plain);
  }

  static CleanPicture jpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(QUALITY);
    return encoded(Picture.JPEG, writer, how, image);
  }

  /** Whether nothing of it can be seen. */
  static boolean isBlank(BufferedImage image) {
    return Arrays.stream(pixels(image)).allMatch(argb -> argb >>> 24 == 0);
  }

  private static boolean isOpaque(BufferedImage image) {
    return Arrays.stream(pixels(image)).allMatch(argb -> argb >>> 24 == OPAQUE);
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  private static BufferedImage withoutAlpha(BufferedImage image) {
    int width = image.getWidth();
    BufferedImage plain = new BufferedImage(width, image.getHeight(), BufferedImage.TYPE_INT_RGB);
    plain.setRGB(0, 0, width, image.getHeight(), pixels(image), 0, width);
    return plain;
  }

  private static CleanPicture encoded(
      String mediaType, ImageWriter writer, ImageWriteParam how, BufferedImage image) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(file)) {
      writer.setOutput(output);
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } finally {
      writer.dispose();
    }
    return CleanPicture.of(
        mediaType, file.toByteArray(), new Dimensions(image.getWidth(), image.getHeight()));
  }
}
