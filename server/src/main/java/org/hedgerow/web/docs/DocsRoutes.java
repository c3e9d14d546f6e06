package org.hedgerow.web.docs;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.apidocs.ApiDocs;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.edge.SecurityHeaders;

/**
 * The documentation of the interface for people: the OpenAPI document shown by Swagger UI, and all
 * problems explained. Everything the pages need comes from this server.
 */
public final class DocsRoutes implements RouteGroup {

  private static final String HTML = "text/html;charset=utf-8";

  /** Which every browser shows. */
  private static final String TEXT = "text/plain;charset=utf-8";

  private static final String CSS = "text/css;charset=utf-8";
  private static final String JAVASCRIPT = "text/javascript;charset=utf-8";

  private final Map<String, DocsFile> assets =
      Map.of(
          "swagger-ui.css",
          DocsFile.resource(SwaggerUi.resource("swagger-ui.css"), CSS),
          "swagger-ui-bundle.js",
          DocsFile.resource(SwaggerUi.resource("swagger-ui-bundle.js"), JAVASCRIPT),
          "start.js",
          DocsFile.ours("start.js", JAVASCRIPT),
          "docs.css",
          DocsFile.ours("docs.css", CSS));

  @Override
  public void addTo(Routes routes) {
    DocsFile docs = DocsFile.ours("docs.html", HTML);
    DocsFile problems = DocsFile.ours("problems.html", HTML);
    routes.get("/docs", context -> page(context, docs));
    routes.get("/docs/problems", context -> page(context, problems));
    routes.get("/docs/security", DocsFile.of(ApiDocs.security(), TEXT)::send);
    routes.get("/docs/security-policy", DocsFile.of(ApiDocs.securityPolicy(), TEXT)::send);
    routes.get("/docs/changelog", DocsFile.of(ApiDocs.changelog(), TEXT)::send);
    routes.get("/docs/faults", DocsFile.of(ApiDocs.faults(), TEXT)::send);
    routes.get("/docs/ui/{file}", this::asset);
  }

  private static void page(Context context, DocsFile page) {
    context.header(SecurityHeaders.POLICY, SecurityHeaders.DOCUMENTS);
    page.send(context);
  }

  private void asset(Context context) {
    Optional.ofNullable(assets.get(context.pathParam("file")))
        .orElseThrow(NotFoundResponse::new)
        .send(context);
  }
}
