package org.hedgerow.pictures;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Arrays;
import java.util.List;

/** What a file is, by its first bytes. */
enum FileKind {
  PNG,
  JPEG,
  /** Or anything else in XML: only reading it tells. */
  SVG;

  /** Enough to tell every kind. */
  private static final int START = 64;

  private static final String ADVICE = " Save the picture as PNG or JPEG and upload that file.";

  /** Files that people take for usable ones: where their mark stands, the mark, what to say. */
  private static final List<Stranger> STRANGERS =
      List.of(
          new Stranger(0, "GIF8", "This is a GIF."),
          new Stranger(8, "WEBP", "This is a WebP picture."),
          new Stranger(4, "ftyphei", "This is a HEIC photo, as iPhones keep them."),
          new Stranger(4, "ftypmif1", "This is a HEIC photo, as iPhones keep them."),
          new Stranger(4, "ftyphev", "This is a HEIC photo, as iPhones keep them."),
          new Stranger(4, "ftypavif", "This is an AVIF picture."),
          new Stranger(4, "ftyp", "This is a film."),
          new Stranger(0, "BM", "This is a BMP picture."),
          new Stranger(0, "II*\0", "This is a TIFF picture."),
          new Stranger(0, "MM\0*", "This is a TIFF picture."),
          new Stranger(0, "%PDF", "This is a PDF document."),
          new Stranger(0, "%!PS", "This is a PostScript document."),
          new Stranger(0, "8BPS", "This is a Photoshop document."),
          new Stranger(0, "PK\3\4", "This is a document or an archive of files."),
          new Stranger(0, "\u001f\u008b", "This is a compressed file, perhaps an SVGZ."));

  private record Stranger(int position, String mark, String message) {
    boolean is(String start) {
      return start.startsWith(mark, position);
    }
  }

  /**
   * @throws UnusablePictureException if it is none of them
   */
  static FileKind of(byte[] upload) {
    if (startsWith(upload, PngFile.SIGNATURE)) {
      return PNG;
    }
    if (JpegFile.isStart(upload)) {
      return JPEG;
    }
    String start = new String(upload, 0, Math.min(upload.length, START), ISO_8859_1);
    if (isMarkup(start)) {
      return SVG;
    }
    throw stranger(start);
  }

  private static boolean startsWith(byte[] upload, byte[] mark) {
    return upload.length >= mark.length
        && Arrays.equals(upload, 0, mark.length, mark, 0, mark.length);
  }

  /** After a byte order mark and blanks, in UTF-8 or, with zeros between, in UTF-16. */
  private static boolean isMarkup(String start) {
    String text = start.replaceFirst("^(\u00ef\u00bb\u00bf|\u00fe\u00ff|\u00ff\u00fe)", "");
    return text.replace("\0", "").stripLeading().startsWith("<");
  }

  private static UnusablePictureException stranger(String start) {
    if (start.isEmpty()) {
      return new UnusablePictureException("The file is empty. Choose the picture again.");
    }
    return new UnusablePictureException(
        STRANGERS.stream()
                .filter(stranger -> stranger.is(start))
                .map(Stranger::message)
                .findFirst()
                .orElse("This file is no picture that can be read: only PNG, JPEG and SVG can.")
            + ADVICE);
  }
}
