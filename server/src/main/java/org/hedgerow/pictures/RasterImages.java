package org.hedgerow.pictures;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Decodes and encodes PNG and JPEG, in memory alone. */
final class RasterImages {

  private static final String PNG = "png";
  private static final String JPEG = "jpeg";

  /** From 0 to 1; edges of drawings stay clean. */
  private static final float QUALITY = 0.9f;

  private RasterImages() {}

  static Optional<BufferedImage> decodedPng(byte[] file) {
    return decoded(PNG, file);
  }

  static Optional<BufferedImage> decodedJpeg(byte[] file) {
    return decoded(JPEG, file);
  }

  /** Nothing if the file is damaged in whatever way: the JDK's readers trip over some of them. */
  private static Optional<BufferedImage> decoded(String format, byte[] file) {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
    try (MemoryCacheImageInputStream input =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(input, true, true);
      return Optional.of(reader.read(0));
    } catch (IOException | RuntimeException damage) {
      return Optional.empty();
    } finally {
      reader.dispose();
    }
  }

  static byte[] png(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(PNG).next();
    return encoded(writer, writer.getDefaultWriteParam(), image);
  }

  static byte[] jpeg(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName(JPEG).next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(QUALITY);
    return encoded(writer, how, image);
  }

  private static byte[] encoded(ImageWriter writer, ImageWriteParam how, BufferedImage image) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream output = new MemoryCacheImageOutputStream(file)) {
      writer.setOutput(output);
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }
}
