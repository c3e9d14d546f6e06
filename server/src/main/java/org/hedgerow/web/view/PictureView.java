package org.hedgerow.web.view;

import org.hedgerow.lexicon.Picture;
import org.hedgerow.web.Routes;

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

  /** The parameter that lets browsers keep a picture for good and still see a new one. */
  public static final String VERSION = "v";

  public static PictureView of(Picture picture) {
    return new PictureView(
        picture.id(),
        address(picture),
        picture.mediaType(),
        picture.title(),
        picture.author(),
        picture.licence(),
        picture.licenceHref(),
        picture.source());
  }

  /** Where it can be fetched. */
  public static String address(Picture picture) {
    return "%s/pictures/%s?%s=%s".formatted(Routes.API, picture.id(), VERSION, picture.version());
  }
}
