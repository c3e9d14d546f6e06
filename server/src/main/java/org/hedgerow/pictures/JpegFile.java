package org.hedgerow.pictures;

import java.util.Optional;
import org.hedgerow.lexicon.Bytes;

/**
 * A JPEG with all that isn't needed to draw it left out: Exif with places and thumbnails, comments,
 * what programs keep for themselves, and what follows the end.
 *
 * @param size as stored, before it is turned
 * @param orientation how it must be turned to stand upright
 * @param essential a JPEG of the segments that draw the picture
 * @param profile the colour profile, if it is one that can be used
 */
record JpegFile(
    Dimensions size, Orientation orientation, Bytes essential, Optional<ColourProfile> profile) {

  /**
   * @throws UnusablePictureException if it is too large, damaged, cut short or not for screens
   */
  static JpegFile read(byte[] upload) {
    return new JpegReading(upload).file();
  }

  static UnusablePictureException damaged() {
    return new UnusablePictureException(
        "This JPEG is damaged and can't be read. Open the picture in a drawing program, save it as"
            + " JPEG again and upload that file.");
  }

  static UnusablePictureException cutShort() {
    return new UnusablePictureException(
        "The end of this JPEG is missing. Save or copy the picture again and upload that file.");
  }

  static UnusablePictureException unusual() {
    return new UnusablePictureException(
        "This JPEG is of an unusual kind. Save the picture as an ordinary JPEG or as PNG and upload"
            + " that file.");
  }

  static UnusablePictureException forPrinters() {
    return new UnusablePictureException(
        "This JPEG has the colours of printing presses (CMYK). Save the picture with RGB colours,"
            + " as JPEG or PNG, and upload that file.");
  }
}
