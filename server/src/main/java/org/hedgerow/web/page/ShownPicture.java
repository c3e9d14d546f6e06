package org.hedgerow.web.page;

import org.hedgerow.lexicon.Picture;
import org.hedgerow.web.view.PictureView;

/**
 * A picture on a page, never without who made it.
 *
 * @param address where the picture is
 * @param licenceAddress where its licence can be read
 */
public record ShownPicture(String address, String credit, String licence, String licenceAddress) {

  public static ShownPicture of(Picture picture) {
    return new ShownPicture(
        PictureView.address(picture),
        "%s by %s, %s".formatted(picture.title(), picture.author(), picture.source()),
        picture.licence(),
        picture.licenceHref());
  }
}
