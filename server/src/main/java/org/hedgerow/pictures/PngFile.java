package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayOutputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.hedgerow.lexicon.Bytes;

/**
 * A PNG with all that isn't needed to draw it left out, unread: text, thumbnails, times, further
 * frames, private chunks and what follows the end.
 *
 * @param essential a PNG of the chunks that draw the picture
 * @param profile the colour profile, if it is one that can be used
 */
record PngFile(PngHeader header, Bytes essential, Optional<ColourProfile> profile) {

  static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  /** Length, name and checksum of a chunk. */
  private static final int AROUND_CHUNK = 12;

  /**
   * @throws UnusablePictureException if it is too large, damaged or cut short
   */
  static PngFile read(byte[] upload) {
    try {
      return new Reading(ByteBuffer.wrap(upload)).file();
    } catch (BufferUnderflowException cutShort) {
      throw new UnusablePictureException(
          "The end of this PNG is missing. Save or copy the picture again and upload that file.",
          cutShort);
    }
  }

  static UnusablePictureException damaged() {
    return new UnusablePictureException(
        "This PNG is damaged and can't be read. Open the picture in a drawing program, save it as"
            + " PNG again and upload that file.");
  }

  private static final class Reading {
    private final ByteBuffer upload;
    private final ByteArrayOutputStream essential = new ByteArrayOutputStream();
    private Optional<ColourProfile> profile = Optional.empty();
    private boolean palette;
    private boolean profiled;

    Reading(ByteBuffer upload) {
      this.upload = upload;
    }

    PngFile file() {
      keep(SIGNATURE.length);
      PngHeader header = header();
      InflatedLength data = new InflatedLength(header.inflatedBytes());
      while (!chunk(data)) {
        // on to the next one
      }
      data.requireComplete();
      if (header.colourType() == PngHeader.PALETTE && !palette) {
        throw damaged();
      }
      return new PngFile(header, Bytes.of(essential.toByteArray()), profile);
    }

    private PngHeader header() {
      ByteBuffer chunk = upload.slice();
      if (chunk.getInt() != PngHeader.LENGTH || !name(chunk).equals("IHDR")) {
        throw damaged();
      }
      PngHeader header = PngHeader.read(chunk);
      keep(AROUND_CHUNK + PngHeader.LENGTH);
      return header;
    }

    /** True at the last chunk. */
    private boolean chunk(InflatedLength data) {
      ByteBuffer chunk = upload.slice();
      int length = chunk.getInt();
      String name = name(chunk);
      if (length < 0) {
        throw damaged();
      }
      if (length > upload.remaining() - AROUND_CHUNK) {
        throw new BufferUnderflowException();
      }
      take(name, chunk.slice(chunk.position(), length), data);
      return name.equals("IEND");
    }

    private void take(String name, ByteBuffer content, InflatedLength data) {
      int whole = AROUND_CHUNK + content.remaining();
      switch (name) {
        case "IDAT" -> {
          data.add(content);
          keep(whole);
        }
        case "PLTE" -> {
          palette = true;
          keep(whole);
        }
        case "tRNS", "IEND" -> keep(whole);
        case "iCCP" -> {
          takeProfile(content);
          skip(whole);
        }
        case "IHDR" -> throw damaged();
        default -> skip(whole);
      }
    }

    /** There may be one; of thousands the first is read. */
    private void takeProfile(ByteBuffer content) {
      if (!profiled) {
        profile = ColourProfile.compressed(content);
      }
      profiled = true;
    }

    private void keep(int length) {
      if (length > upload.remaining()) {
        throw new BufferUnderflowException();
      }
      essential.write(upload.array(), upload.arrayOffset() + upload.position(), length);
      skip(length);
    }

    private void skip(int length) {
      upload.position(upload.position() + length);
    }

    private static String name(ByteBuffer chunk) {
      byte[] name = new byte[4];
      chunk.get(name);
      return new String(name, ISO_8859_1);
    }
  }
}
