package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.io.InputStream;
import java.util.Objects;

/** A file that is served as it stands. */
record Asset(String resource, String contentType) {

  private static final String OURS = "/org/hedgerow/web/api/";

  static Asset ours(String name, String contentType) {
    return new Asset(OURS + name, contentType);
  }

  void send(Context context) {
    InputStream stream = Asset.class.getResourceAsStream(resource);
    context
        .header(Header.CACHE_CONTROL, "no-cache")
        .header(Header.X_CONTENT_TYPE_OPTIONS, "nosniff")
        .contentType(contentType)
        .result(Objects.requireNonNull(stream, resource));
  }
}
