package org.hedgerow.web.docs;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import org.hedgerow.apidocs.ApiDocs;

/** {@code GET /openapi.yaml}: the document that this interface keeps to. */
public final class DocumentHandler implements Handler {

  private final DocsFile document = DocsFile.of(ApiDocs.openApi(), "application/yaml");

  @Override
  public void handle(Context context) {
    document.send(context);
  }
}
