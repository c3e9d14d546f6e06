package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/** Writes PNGs chunk by chunk, also such as no program would write. */
final class PngBuilder {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private final ByteArrayOutputStream file = new ByteArrayOutputStream();

  PngBuilder() {
    file.writeBytes(SIGNATURE);
  }

  PngBuilder header(int width, int height, int bits, int colourType) {
    return chunk(
        "IHDR",
        ByteBuffer.allocate(13)
            .putInt(width)
            .putInt(height)
            .put((byte) bits)
            .put((byte) colourType)
            .array());
  }

  PngBuilder chunk(String name, byte[] content) {
    byte[] named = ByteBuffer.allocate(4 + content.length).put(name(name)).put(content).array();
    CRC32 checksum = new CRC32();
    checksum.update(named);
    file.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    file.writeBytes(named);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) checksum.getValue()).array());
    return this;
  }

  private static byte[] name(String name) {
    return name.getBytes(ISO_8859_1);
  }

  /** The same row again and again, unfiltered. */
  PngBuilder rows(int count, byte[] row) {
    ByteArrayOutputStream rows = new ByteArrayOutputStream();
    for (int i = 0; i < count; i++) {
      rows.write(0);
      rows.writeBytes(row);
    }
    return chunk("IDAT", deflated(rows.toByteArray()));
  }

  /** Zeros, of which hundreds take one byte. */
  static byte[] deflatedZeros(int megabytes) {
    ByteArrayOutputStream compressed = new ByteArrayOutputStream();
    Deflater quick = new Deflater(Deflater.BEST_SPEED);
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(compressed, quick)) {
      for (int i = 0; i < megabytes; i++) {
        deflater.write(new byte[1 << 20]);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return compressed.toByteArray();
  }

  static byte[] deflated(byte[] content) {
    ByteArrayOutputStream compressed = new ByteArrayOutputStream();
    try (DeflaterOutputStream deflater = new DeflaterOutputStream(compressed)) {
      deflater.write(content);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return compressed.toByteArray();
  }

  byte[] end() {
    return chunk("IEND", new byte[0]).unfinished();
  }

  byte[] unfinished() {
    return file.toByteArray();
  }
}
