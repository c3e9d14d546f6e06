package org.hedgerow.pictures;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.SampleModel;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;

/** PNG and JPEG, made anew from their pixels. */
final class RasterIntake {

  /**
   * Where a picture has more, only every second row and column of it is decoded. That is hardly
   * seen in photos, which are soft; thin lines of a drawing could be lost.
   */
  private static final long MAX_DECODED_PNG_BYTES = 40_000_000;

  private static final long MAX_DECODED_JPEG_BYTES = 30_000_000;

  private RasterIntake() {}

  static CleanPicture takePng(byte[] upload) {
    Optional<ColourProfile> profile = PngFile.read(upload).profile();
    return PixelWriter.png(withColours(profile, scaled(decodedPng(upload))));
  }

  private static BufferedImage decodedPng(byte[] upload) {
    try {
      return decoded("png", upload, MAX_DECODED_PNG_BYTES);
    } catch (IOException | RuntimeException damage) {
      throw isCutShort(damage) ? PngFile.incomplete() : PngFile.damaged();
    }
  }

  private static boolean isCutShort(Exception damage) {
    return damage instanceof EOFException || damage.getCause() instanceof EOFException;
  }

  static CleanPicture takeJpeg(byte[] upload) {
    JpegFile file = JpegFile.read(upload);
    BufferedImage image = withColours(file.profile(), scaled(decodedJpeg(file.essential())));
    return PixelWriter.jpeg(
        ExifFilterUtils.getFilterForOrientation(file.orientation()).apply(image));
  }

  private static BufferedImage decodedJpeg(byte[] file) {
    try {
      return decoded("jpeg", file, MAX_DECODED_JPEG_BYTES);
    } catch (IOException | RuntimeException damage) {
      throw JpegFile.damaged();
    }
  }

  /** The JDK's readers trip over damaged files in more ways than they declare. */
  private static BufferedImage decoded(String format, byte[] file, long maxBytes)
      throws IOException {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
    try (MemoryCacheImageInputStream input =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(input, /* seekForwardOnly= */ true, /* ignoreMetadata= */ true);
      ImageReadParam how = reader.getDefaultReadParam();
      int step = decodedBytes(reader) > maxBytes ? 2 : 1;
      how.setSourceSubsampling(step, step, 0, 0);
      return reader.read(0, how);
    } finally {
      reader.dispose();
    }
  }

  private static long decodedBytes(ImageReader reader) throws IOException {
    SampleModel pixel = reader.getImageTypes(0).next().getSampleModel(1, 1);
    long bits = (long) pixel.getNumDataElements() * DataBuffer.getDataTypeSize(pixel.getDataType());
    return bits / Byte.SIZE * reader.getWidth(0) * reader.getHeight(0);
  }

  private static BufferedImage scaled(BufferedImage image) {
    Dimensions size = new Dimensions(image.getWidth(), image.getHeight()).fitted();
    boolean alpha = image.getColorModel().hasAlpha();
    try {
      return Thumbnails.of(withPlainGrey(image))
          .forceSize(size.width(), size.height())
          .imageType(alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB)
          .asBufferedImage();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /**
   * Grey as three equal colours. The colour model that the JDK gives to grey pictures is a linear
   * one, which makes them lighter than they were drawn.
   */
  private static BufferedImage withPlainGrey(BufferedImage image) {
    Raster raster = image.getRaster();
    if (image.getColorModel().getColorSpace().getType() != ColorSpace.TYPE_GRAY
        || !(raster.getSampleModel() instanceof PixelInterleavedSampleModel samples)) {
      return image;
    }
    boolean alpha = image.getColorModel().hasAlpha();
    ColorModel model =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            alpha,
            /* isAlphaPremultiplied= */ false,
            image.getTransparency(),
            samples.getDataType());
    int[] bands = alpha ? new int[] {0, 0, 0, 1} : new int[] {0, 0, 0};
    return new BufferedImage(
        model,
        Raster.createInterleavedRaster(
            raster.getDataBuffer(),
            raster.getWidth(),
            raster.getHeight(),
            samples.getScanlineStride(),
            samples.getPixelStride(),
            bands,
            null),
        /* isRasterPremultiplied= */ false,
        null);
  }

  private static BufferedImage withColours(Optional<ColourProfile> profile, BufferedImage image) {
    return profile.map(colours -> colours.toScreen(image)).orElse(image);
  }
}
