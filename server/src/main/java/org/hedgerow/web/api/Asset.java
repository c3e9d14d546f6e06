package org.hedgerow.web.api;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** A file that is served as it stands. */
@SuppressWarnings("ArrayRecordComponent") // never compared, and never changed
record Asset(byte[] bytes, String contentType, String entityTag) {

  private static final String OURS = "/org/hedgerow/web/api/";

  static Asset of(byte[] bytes, String contentType) {
    return new Asset(bytes, contentType, EntityTag.of(bytes));
  }

  /** One of this package. */
  static Asset ours(String name, String contentType) {
    return resource(OURS + name, contentType);
  }

  static Asset resource(String resource, String contentType) {
    try (InputStream stream = Asset.class.getResourceAsStream(resource)) {
      return of(Objects.requireNonNull(stream, resource).readAllBytes(), contentType);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  void send(Context context) {
    Sending.file(context, bytes, contentType, entityTag, Sending.REVALIDATED);
  }
}
