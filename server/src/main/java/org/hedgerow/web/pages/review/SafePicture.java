package org.hedgerow.web.pages.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import org.hedgerow.pictures.CleanPicture;

/** Answers with a picture in such a way that nothing in it could ever run. */
final class SafePicture {
  private SafePicture() {}

  static void write(Context context, CleanPicture picture) {
    context
        .header(
            Header.CONTENT_SECURITY_POLICY,
            "default-src 'none'; style-src 'unsafe-inline'; sandbox")
        .header(Header.X_CONTENT_TYPE_OPTIONS, "nosniff")
        .header(Header.CACHE_CONTROL, "private, max-age=3600")
        .contentType(picture.mediaType())
        .result(picture.content().toArray());
  }
}
