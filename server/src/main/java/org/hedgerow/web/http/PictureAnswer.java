package org.hedgerow.web.http;

import io.javalin.http.Context;
import org.hedgerow.lexicon.Bytes;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.web.edge.SecurityHeaders;

/** How pictures are sent: so that nothing in them can run. */
public final class PictureAnswer {

  private PictureAnswer() {}

  public static void seal(Context context) {
    context.header(SecurityHeaders.POLICY, SecurityHeaders.PICTURES);
  }

  public static void send(Context context, String mediaType, Bytes content) {
    seal(context);
    context.contentType(contentType(mediaType)).result(content.toArray());
  }

  public static String contentType(String mediaType) {
    return mediaType.equals(Picture.SVG) ? Picture.SVG + "; charset=utf-8" : mediaType;
  }
}
