package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Picture;

/** How pictures are sent: so that nothing in them can run. */
public final class PictureAnswer {

  /** An SVG opened by itself is a document: it may run and fetch nothing. */
  private static final String POLICY = "default-src 'none'; frame-ancestors 'none'; sandbox";

  private PictureAnswer() {}

  static void seal(Context context) {
    context
        .header(Header.CONTENT_SECURITY_POLICY, POLICY)
        .header(Header.X_CONTENT_TYPE_OPTIONS, "nosniff");
  }

  public static void send(Context context, String mediaType, Bytes content) {
    seal(context);
    String contentType =
        mediaType.equals(Picture.SVG) ? Picture.SVG + "; charset=utf-8" : mediaType;
    context.contentType(contentType).result(content.toArray());
  }
}
