package org.hedgerow.review;

import org.hedgerow.pictures.CleanPicture;

/**
 * A picture that somebody sent.
 *
 * @param id made from what it shows, so that the same picture has one id
 */
public record Upload(String id, CleanPicture picture) {
  static Upload of(CleanPicture picture) {
    return new Upload("sent-" + picture.content().fingerprint(), picture);
  }
}
