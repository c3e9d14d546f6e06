package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import net.coobird.thumbnailator.util.exif.ExifUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * A JPEG reduced to the segments that draw it (ITU-T T.81, annex B): without Exif, thumbnails,
 * comments, and what follows its end. Its header is checked before anything is decoded.
 */
final class JpegFile {

  /**
   * A scan costs time in proportion to the whole picture, whatever it holds, and there may be
   * thousands in a small file. Progressive pictures have some ten.
   */
  private static final int MAX_SCANS = 64;

  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int LENGTH_BYTES = 2;
  private static final String PROFILE = "ICC_PROFILE\0";

  private final ByteBuffer file;
  private final ByteArrayOutputStream essential = new ByteArrayOutputStream();
  private final ByteArrayOutputStream profile = new ByteArrayOutputStream();
  private Orientation orientation = Orientation.TOP_LEFT;
  private boolean framed;
  private int scans;

  private JpegFile(byte[] upload) {
    this.file = ByteBuffer.wrap(upload);
  }

  /**
   * @throws UnusablePictureException if it is too large, damaged, cut short or not for screens
   */
  static JpegFile read(byte[] upload) {
    JpegFile jpeg = new JpegFile(upload);
    try {
      jpeg.read();
    } catch (BufferUnderflowException cutShort) {
      throw new UnusablePictureException(
          "The end of this JPEG is missing. Save or copy the picture again and upload that file.",
          cutShort);
    }
    return jpeg;
  }

  static boolean isStart(byte[] upload) {
    return upload.length > 2
        && upload[0] == (byte) 0xff
        && upload[1] == (byte) 0xd8
        && upload[2] == (byte) 0xff;
  }

  /** A JPEG of the segments that draw the picture. */
  byte[] essential() {
    return essential.toByteArray();
  }

  /** How the decoded picture must be turned to stand upright. */
  Orientation orientation() {
    return orientation;
  }

  /** Empty if the file has none, or none that can be used. */
  Optional<ColourProfile> profile() {
    return ColourProfile.of(profile.toByteArray());
  }

  private void read() {
    keep(0, 2);
    int start = file.position();
    int marker = marker();
    while (marker != END) {
      segment(marker, start);
      start = file.position();
      marker = marker();
    }
    keep(start, file.position());
    if (scans == 0) {
      throw damaged();
    }
  }

  private int marker() {
    if (next() != 0xff) {
      throw damaged();
    }
    int marker = next();
    while (marker == 0xff) {
      marker = next();
    }
    return marker;
  }

  private int next() {
    return Byte.toUnsignedInt(file.get());
  }

  private void segment(int marker, int start) {
    byte[] content = content();
    switch (marker) {
      case 0xc0, 0xc1, 0xc2 -> {
        frame(ByteBuffer.wrap(content));
        keep(start, file.position());
      }
      case 0xc4, 0xdb, 0xdd -> keep(start, file.position());
      case SCAN -> {
        scan();
        keep(start, file.position());
      }
      case 0xe0 -> keepIf(startsWith(content, "JFIF\0"), start);
      case 0xe1 -> takeOrientation(content);
      case 0xe2 -> takeProfile(content);
      case 0xee -> keepIf(startsWith(content, "Adobe"), start);
      default -> requireNote(marker);
    }
  }

  private byte[] content() {
    int length = Short.toUnsignedInt(file.getShort()) - LENGTH_BYTES;
    if (length < 0) {
      throw damaged();
    }
    byte[] content = new byte[length];
    file.get(content);
    return content;
  }

  private void keepIf(boolean needed, int start) {
    if (needed) {
      keep(start, file.position());
    }
  }

  private void keep(int start, int end) {
    essential.write(file.array(), start, end - start);
    file.position(end);
  }

  private void frame(ByteBuffer content) {
    if (framed || content.remaining() < 6) {
      throw damaged();
    }
    framed = true;
    if (content.get() != 8) {
      throw unusual();
    }
    int height = Short.toUnsignedInt(content.getShort());
    Dimensions.declared(Short.toUnsignedInt(content.getShort()), height);
    int colours = content.get();
    if (colours == 4) {
      throw new UnusablePictureException(
          "This JPEG has the colours of printing presses (CMYK). Save the picture with RGB"
              + " colours, as JPEG or PNG, and upload that file.");
    }
    if (colours != 1 && colours != 3) {
      throw unusual();
    }
  }

  private void scan() {
    scans++;
    if (!framed) {
      throw damaged();
    }
    if (scans > MAX_SCANS) {
      throw new UnusablePictureException(
          "This JPEG draws its picture over itself too many times. It was refused because such"
              + " files can stop a server. Save the picture as JPEG again and upload that file.");
    }
    int after;
    do {
      while (next() != 0xff) {
        // a byte of the picture
      }
      after = next();
      file.position(file.position() - 1);
    } while (after == 0 || after == 0xff || (after >= 0xd0 && after <= 0xd7));
    file.position(file.position() - 1);
  }

  /** Of applications, or a comment: left out. Frames of other kinds are rare. */
  private static void requireNote(int marker) {
    boolean note = (marker >= 0xe0 && marker <= 0xef) || marker == 0xfe;
    if (!note) {
      throw marker >= 0xc0 && marker <= 0xdf ? unusual() : damaged();
    }
  }

  /**
   * None from damaged Exif, in which the library trips in many ways. It reads the first directory
   * right after the header, where every camera writes it.
   */
  private void takeOrientation(byte[] content) {
    try {
      boolean usual =
          startsWith(content, "Exif\0\0II*\0\b\0\0\0")
              || startsWith(content, "Exif\0\0MM\0*\0\0\0\b");
      Orientation found = usual ? ExifUtils.getOrientationFromExif(content) : null;
      orientation = found == null ? orientation : found;
    } catch (RuntimeException damage) {
      // as it is stored
    }
  }

  /** In the order in which the parts stand, which is how they are written (ICC.1, annex B.4). */
  private void takeProfile(byte[] content) {
    int start = PROFILE.length() + 2;
    if (startsWith(content, PROFILE) && content.length > start) {
      profile.write(content, start, content.length - start);
    }
  }

  private static boolean startsWith(byte[] content, String start) {
    byte[] mark = start.getBytes(ISO_8859_1);
    return content.length >= mark.length
        && Arrays.equals(content, 0, mark.length, mark, 0, mark.length);
  }

  static UnusablePictureException damaged() {
    return new UnusablePictureException(
        "This JPEG is damaged and can't be read. Open the picture in a drawing program, save it as"
            + " JPEG again and upload that file.");
  }

  private static UnusablePictureException unusual() {
    return new UnusablePictureException(
        "This JPEG is of an unusual kind. Save the picture as an ordinary JPEG or as PNG and upload"
            + " that file.");
  }
}
