package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** A number in an address. */
public final class PathNumber {
  private PathNumber() {}

  /** What is no number leads nowhere. */
  public static int of(Context context, String name) {
    String text = context.pathParam(name);
    if (!text.matches("[1-9][0-9]{0,8}")) {
      throw new NotFoundResponse();
    }
    return Integer.parseInt(text);
  }
}
