package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.apidocs.ApiDocs;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;

/**
 * The documentation of the interface for people: the OpenAPI document shown by Swagger UI, and all
 * problems explained. Everything the pages need comes from this server.
 */
public final class DocsRoutes implements RouteGroup {

  /** Swagger UI puts styles into the page and pictures into addresses. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline';"
          + " img-src 'self' data:; font-src 'self' data:; connect-src 'self';"
          + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private static final String HTML = "text/html;charset=utf-8";
  private static final String CSS = "text/css;charset=utf-8";
  private static final String JAVASCRIPT = "text/javascript;charset=utf-8";

  private final Map<String, Asset> assets =
      Map.of(
          "swagger-ui.css",
          new Asset(SwaggerUi.resource("swagger-ui.css"), CSS),
          "swagger-ui-bundle.js",
          new Asset(SwaggerUi.resource("swagger-ui-bundle.js"), JAVASCRIPT),
          "start.js",
          Asset.ours("start.js", JAVASCRIPT),
          "docs.css",
          Asset.ours("docs.css", CSS));

  @Override
  public void addTo(Routes routes) {
    Asset docs = Asset.ours("docs.html", HTML);
    Asset problems = Asset.ours("problems.html", HTML);
    routes.get("/docs", context -> page(context, docs));
    routes.get("/docs/problems", context -> page(context, problems));
    routes.get("/docs/security", context -> text(context, ApiDocs.security()));
    routes.get("/docs/faults", context -> text(context, ApiDocs.faults()));
    routes.get("/docs/ui/{file}", this::asset);
  }

  /** As plain text, which every browser shows. */
  private static void text(Context context, byte[] document) {
    context
        .header(Header.CACHE_CONTROL, "no-cache")
        .header(Header.X_CONTENT_TYPE_OPTIONS, "nosniff")
        .contentType("text/plain;charset=utf-8")
        .result(document);
  }

  private static void page(Context context, Asset page) {
    context.header(Header.CONTENT_SECURITY_POLICY, POLICY);
    page.send(context);
  }

  private void asset(Context context) {
    Optional.ofNullable(assets.get(context.pathParam("file")))
        .orElseThrow(NotFoundResponse::new)
        .send(context);
  }
}
