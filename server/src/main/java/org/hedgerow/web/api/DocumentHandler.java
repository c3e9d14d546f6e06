package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import org.hedgerow.apidocs.ApiDocs;

/** {@code GET /openapi.yaml}: the document that this interface keeps to. */
final class DocumentHandler implements Handler {

  private final byte[] document = ApiDocs.openApi();

  @Override
  public void handle(Context context) {
    context
        .header(Header.CACHE_CONTROL, "no-cache")
        .contentType("application/yaml")
        .result(document);
  }
}
