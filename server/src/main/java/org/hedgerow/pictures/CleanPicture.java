package org.hedgerow.pictures;

import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Picture;

/**
 * A picture that is safe to keep and to serve.
 *
 * @param mediaType one of {@link Picture#MEDIA_TYPES}
 * @param content with nothing in it but the picture
 * @param width in pixels; of an SVG document, the width of its view box, rounded, at least 1
 * @param height likewise
 */
public record CleanPicture(String mediaType, Bytes content, int width, int height) {

  static CleanPicture of(String mediaType, byte[] content, Dimensions size) {
    return new CleanPicture(mediaType, Bytes.of(content), size.width(), size.height());
  }
}
