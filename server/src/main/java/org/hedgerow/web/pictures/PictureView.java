package org.hedgerow.web.pictures;

import org.hedgerow.lexicon.Picture;

/**
 * The picture of a word, with what must be said of it wherever it is shown.
 *
 * @param href where it can be fetched
 * @param mediaType what is fetched there, as in {@code image/png}
 * @param source where it comes from
 */
public record PictureView(
    String id,
    String href,
    String mediaType,
    String title,
    String author,
    String licence,
    String licenceHref,
    String source) {

  public static PictureView of(Picture picture) {
    return new PictureView(
        picture.id(),
        PictureHandler.address(picture),
        picture.mediaType(),
        picture.title(),
        picture.author(),
        picture.licence(),
        picture.licenceHref(),
        picture.source());
  }
}
