package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import org.hedgerow.pictures.CleanPicture;
import org.hedgerow.web.edge.SecurityHeaders;

/** Answers with a picture in such a way that nothing in it could ever run. */
final class SafePicture {
  private SafePicture() {}

  static void write(Context context, CleanPicture picture) {
    context
        .header(SecurityHeaders.POLICY, SecurityHeaders.PICTURES)
        .header(Header.CACHE_CONTROL, "private, max-age=3600")
        .contentType(picture.mediaType())
        .result(picture.content().toArray());
  }
}
