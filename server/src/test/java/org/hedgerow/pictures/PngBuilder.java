package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
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

  /** Zeros, of which a thousand take one byte: the same block again and again. */
  static byte[] deflatedZeros(int megabytes) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    deflater.setInput(new byte[1 << 20]);
    byte[] first = flushed(deflater);
    deflater.setInput(new byte[1 << 20]);
    byte[] another = flushed(deflater);
    deflater.end();
    ByteArrayOutputStream compressed = new ByteArrayOutputStream();
    compressed.writeBytes(first);
    for (int i = 1; i < megabytes; i++) {
      compressed.writeBytes(another);
    }
    return compressed.toByteArray();
  }

  private static byte[] flushed(Deflater deflater) {
    byte[] block = new byte[1 << 16];
    int length = deflater.deflate(block, 0, block.length, Deflater.SYNC_FLUSH);
    return Arrays.copyOf(block, length);
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
