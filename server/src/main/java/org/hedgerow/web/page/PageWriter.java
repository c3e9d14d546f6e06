package org.hedgerow.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.web.edge.SecurityHeaders;
import org.hedgerow.web.problems.ProblemException;

/** Answers with pages made from templates. Safe for many threads. */
public final class PageWriter {

  /** Templates are compiled into the packages of the records that they show. */
  private static final String TEMPLATES = "org.hedgerow.web";

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(
          null, ContentType.Html, PageWriter.class.getClassLoader(), TEMPLATES);
  private final Assets assets;
  private final PageLayout frame;

  public PageWriter(Assets assets, PageLayout frame) {
    this.assets = assets;
    this.frame = frame;
  }

  /** With the status that the context has. */
  public void write(Context context, String template, Map<String, Object> parameters) {
    Map<String, Object> all = new LinkedHashMap<>(parameters);
    PageHeader header = header(context);
    all.put("assets", assets.seenWith(header));
    StringOutput output = new StringOutput();
    templates.render(template, all, output);
    context
        .header(SecurityHeaders.POLICY, SecurityHeaders.PAGES)
        .header(Header.CACHE_CONTROL, header.isVisitors() ? "no-cache" : "no-store")
        .contentType("text/html; charset=utf-8")
        .result(output.toString());
  }

  /** Without the records of accounts a page can still be shown as visitors see it. */
  private PageHeader header(Context context) {
    String centre = frame.centre().get();
    try {
      return frame
          .forms()
          .map(tokens -> PageHeader.of(context, tokens, frame))
          .orElseGet(() -> PageHeader.ofVisitor(centre));
    } catch (UnavailableException | ProblemException unknown) {
      return PageHeader.ofVisitor(centre);
    }
  }
}
