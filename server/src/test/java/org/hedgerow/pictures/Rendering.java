package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/** Pictures drawn for tests, and read back by the JDK. */
final class Rendering {

  private Rendering() {}

  /** Red above left, green above right, blue below left, white below right. */
  static BufferedImage quarters(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    Color[] colours = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
    for (int i = 0; i < colours.length; i++) {
      graphics.setColor(colours[i]);
      graphics.fillRect(i % 2 * width / 2, i / 2 * height / 2, width / 2, height / 2);
    }
    graphics.dispose();
    return image;
  }

  static byte[] written(BufferedImage image, String format) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, file)) {
        throw new IllegalStateException("no writer for " + format);
      }
      return file.toByteArray();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  static BufferedImage read(CleanPicture picture) {
    try {
      return ImageIO.read(new ByteArrayInputStream(picture.content().toArray()));
    } catch (IOException damage) {
      throw new UncheckedIOException(damage);
    }
  }

  /** The names of the chunks of a PNG, in order. */
  static List<String> chunks(byte[] png) {
    ByteBuffer file = ByteBuffer.wrap(png).position(8);
    List<String> names = new ArrayList<>();
    while (file.hasRemaining()) {
      int length = file.getInt();
      byte[] name = new byte[4];
      file.get(name);
      names.add(new String(name, ISO_8859_1));
      file.position(file.position() + length + 4);
    }
    return names;
  }

  /** The markers of the segments of a JPEG before its first scan, in hexadecimal. */
  static List<String> segments(byte[] jpeg) {
    ByteBuffer file = ByteBuffer.wrap(jpeg).position(2);
    List<String> markers = new ArrayList<>();
    int marker;
    do {
      marker = Short.toUnsignedInt(file.getShort());
      markers.add(Integer.toHexString(marker));
      file.position(file.position() + Short.toUnsignedInt(file.getShort(file.position())));
    } while (marker != 0xffda);
    return markers;
  }

  /** The colours above left, above right, below left and below right. */
  static String corners(BufferedImage image) {
    int right = image.getWidth() * 3 / 4;
    int bottom = image.getHeight() * 3 / 4;
    int left = image.getWidth() / 4;
    int top = image.getHeight() / 4;
    return colour(image.getRGB(left, top))
        + colour(image.getRGB(right, top))
        + colour(image.getRGB(left, bottom))
        + colour(image.getRGB(right, bottom));
  }

  private static String colour(int rgb) {
    Color colour = new Color(rgb);
    boolean red = colour.getRed() > 128;
    boolean green = colour.getGreen() > 128;
    boolean blue = colour.getBlue() > 128;
    if (red && green && blue) {
      return "W";
    }
    return red ? "R" : green ? "G" : blue ? "B" : "-";
  }
}
