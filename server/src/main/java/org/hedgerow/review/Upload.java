package org.hedgerow.review;

import org.hedgerow.pictures.CleanPicture;

/**
 * A picture that somebody sent.
 *
 * @param id made from what it shows and who sent it, so that a picture sent again keeps its id and
 *     nobody's upload is another's
 */
public record Upload(String id, CleanPicture picture) {
  static Upload of(CleanPicture picture, int accountId) {
    return new Upload("sent-%s-%d".formatted(picture.content().fingerprint(), accountId), picture);
  }
}
