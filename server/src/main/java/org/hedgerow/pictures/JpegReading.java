package org.hedgerow.pictures;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.hedgerow.lexicon.Bytes;

/** Walks over the segments of a JPEG (ITU-T T.81, annex B) and keeps those that draw. */
final class JpegReading {

  /**
   * A scan costs time in proportion to the whole picture, whatever it holds, and there may be
   * thousands in a small file. Progressive pictures have some ten.
   */
  private static final int MAX_SCANS = 64;

  private static final int START = 0xd8;
  private static final int END = 0xd9;
  private static final int SCAN = 0xda;
  private static final int LENGTH_BYTES = 2;

  private final ByteBuffer upload;
  private final ByteArrayOutputStream essential = new ByteArrayOutputStream();
  private final JpegProfile profile = new JpegProfile();
  private Orientation orientation = Orientation.UPRIGHT;
  private Optional<Dimensions> size = Optional.empty();
  private int scans;

  JpegReading(byte[] upload) {
    this.upload = ByteBuffer.wrap(upload);
  }

  JpegFile file() {
    keepMarker(marker());
    int marker = marker();
    while (marker != END) {
      segment(marker);
      marker = marker();
    }
    keepMarker(END);
    if (scans == 0) {
      throw JpegFile.damaged();
    }
    return new JpegFile(
        size.orElseThrow(JpegFile::damaged),
        orientation,
        Bytes.of(essential.toByteArray()),
        profile.profile());
  }

  private int marker() {
    if (next() != 0xff) {
      throw JpegFile.damaged();
    }
    int marker = next();
    while (marker == 0xff) {
      marker = next();
    }
    return marker;
  }

  private int next() {
    if (!upload.hasRemaining()) {
      throw JpegFile.cutShort();
    }
    return Byte.toUnsignedInt(upload.get());
  }

  private void keepMarker(int marker) {
    essential.write(0xff);
    essential.write(marker);
  }

  private void segment(int marker) {
    ByteBuffer content = content();
    switch (marker) {
      case 0xc0, 0xc1, 0xc2 -> {
        frame(content.duplicate());
        keep(marker, content);
      }
      case 0xc4, 0xdb, 0xdd -> keep(marker, content);
      case SCAN -> scan(content);
      case 0xe0 -> keepFileMarker(content);
      case 0xe1 -> orientation = ExifOrientation.in(content).orElse(orientation);
      case 0xe2 -> profile.add(content);
      case 0xee -> keepColourTransform(content);
      case 0xc3,
          0xc5,
          0xc6,
          0xc7,
          0xc8,
          0xc9,
          0xca,
          0xcb,
          0xcc,
          0xcd,
          0xce,
          0xcf,
          0xdc,
          0xde,
          0xdf ->
          throw JpegFile.unusual();
      default -> requireKnownToBeNeedless(marker);
    }
  }

  private ByteBuffer content() {
    int length = (next() << 8 | next()) - LENGTH_BYTES;
    if (length < 0) {
      throw JpegFile.damaged();
    }
    if (length > upload.remaining()) {
      throw JpegFile.cutShort();
    }
    ByteBuffer content = upload.slice(upload.position(), length);
    upload.position(upload.position() + length);
    return content;
  }

  /** Of applications, or a comment. */
  private static void requireKnownToBeNeedless(int marker) {
    if ((marker < 0xe0 || marker > 0xef) && marker != 0xfe) {
      throw JpegFile.damaged();
    }
  }

  private void frame(ByteBuffer content) {
    if (size.isPresent() || content.remaining() < 6) {
      throw JpegFile.damaged();
    }
    if (content.get() != 8) {
      throw JpegFile.unusual();
    }
    int height = Short.toUnsignedInt(content.getShort());
    int width = Short.toUnsignedInt(content.getShort());
    size = Optional.of(Dimensions.declared(width, height));
    int colours = content.get();
    if (colours == 4) {
      throw JpegFile.forPrinters();
    }
    if (colours != 1 && colours != 3) {
      throw JpegFile.unusual();
    }
  }

  private void scan(ByteBuffer header) {
    scans++;
    if (size.isEmpty()) {
      throw JpegFile.damaged();
    }
    if (scans > MAX_SCANS) {
      throw new UnusablePictureException(
          "This JPEG draws its picture over itself too many times. It was refused because such"
              + " files can stop a server. Save the picture as JPEG again and upload that file.");
    }
    keep(SCAN, header);
    int start = upload.position();
    int end = endOfScan();
    essential.write(upload.array(), upload.arrayOffset() + start, end - start);
    upload.position(end);
  }

  /** Where the next marker stands that is neither a stuffed byte nor a restart. */
  private int endOfScan() {
    for (int at = upload.position(); at + 1 < upload.limit(); at++) {
      if (upload.get(at) == (byte) 0xff) {
        int after = Byte.toUnsignedInt(upload.get(at + 1));
        boolean inside = after == 0 || after == 0xff || (after >= 0xd0 && after <= 0xd7);
        if (!inside) {
          return at;
        }
      }
    }
    throw JpegFile.cutShort();
  }

  /** Of JFIF only what it says of colours is of use: that it is JFIF. */
  private void keepFileMarker(ByteBuffer content) {
    if (startsWith(content, "JFIF\0")) {
      keep(0xe0, ByteBuffer.wrap(new byte[] {'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0}));
    }
  }

  private void keepColourTransform(ByteBuffer content) {
    if (startsWith(content, "Adobe") && content.remaining() >= 12) {
      keep(0xee, content.slice(0, 12));
    }
  }

  static boolean startsWith(ByteBuffer content, String start) {
    if (content.remaining() < start.length()) {
      return false;
    }
    for (int i = 0; i < start.length(); i++) {
      if (content.get(i) != start.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private void keep(int marker, ByteBuffer content) {
    int length = content.remaining();
    keepMarker(marker);
    essential.write((length + LENGTH_BYTES) >> 8);
    essential.write(length + LENGTH_BYTES);
    essential.write(content.array(), content.arrayOffset() + content.position(), length);
  }

  static boolean isStart(byte[] upload) {
    return upload.length > 2
        && upload[0] == (byte) 0xff
        && upload[1] == (byte) START
        && upload[2] == (byte) 0xff;
  }
}
