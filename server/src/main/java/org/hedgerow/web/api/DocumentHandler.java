package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import org.hedgerow.apidocs.ApiDocs;

/** {@code GET /openapi.yaml}: the document that this interface keeps to. */
final class DocumentHandler implements Handler {

  private final Asset document = Asset.of(ApiDocs.openApi(), "application/yaml");

  @Override
  public void handle(Context context) {
    document.send(context);
  }
}
