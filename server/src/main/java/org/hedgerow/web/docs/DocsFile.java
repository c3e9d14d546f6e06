package org.hedgerow.web.docs;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.hedgerow.web.http.EntityTag;
import org.hedgerow.web.http.Sending;

/** A file that is served as it stands. */
@SuppressWarnings("ArrayRecordComponent") // never compared, and never changed
record DocsFile(byte[] bytes, String contentType, String entityTag) {

  private static final String OURS = "/org/hedgerow/web/docs/";

  static DocsFile of(byte[] bytes, String contentType) {
    return new DocsFile(bytes, contentType, EntityTag.of(bytes));
  }

  /** One of this package. */
  static DocsFile ours(String name, String contentType) {
    return resource(OURS + name, contentType);
  }

  static DocsFile resource(String resource, String contentType) {
    try (InputStream stream = DocsFile.class.getResourceAsStream(resource)) {
      return of(Objects.requireNonNull(stream, resource).readAllBytes(), contentType);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  void send(Context context) {
    Sending.file(context, bytes, contentType, entityTag, Sending.REVALIDATED);
  }
}
