package org.hedgerow.web.pages;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.LinkedHashMap;
import java.util.Map;

/** Answers with pages made from templates. Safe for many threads. */
final class PageWriter {

  /** Everything comes from us: no other server, and nothing written into the page itself. */
  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self';"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(
          null,
          ContentType.Html,
          PageWriter.class.getClassLoader(),
          PageWriter.class.getPackageName());
  private final Assets assets;

  PageWriter(Assets assets) {
    this.assets = assets;
  }

  /** With the status that the context has. */
  void write(Context context, String template, Map<String, Object> parameters) {
    Map<String, Object> all = new LinkedHashMap<>(parameters);
    all.put("assets", assets);
    StringOutput output = new StringOutput();
    templates.render(template, all, output);
    context
        .header(Header.CONTENT_SECURITY_POLICY, POLICY)
        .header(Header.X_CONTENT_TYPE_OPTIONS, "nosniff")
        .header("Referrer-Policy", "same-origin")
        .header(Header.CACHE_CONTROL, "no-cache")
        .contentType("text/html; charset=utf-8")
        .result(output.toString());
  }
}
