package org.hedgerow.web.pages;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.util.List;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.api.ApiRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;

/** A server with the pages of the first edition and the pictures on them, on a free port. */
final class PagesServer implements AutoCloseable {

  private final WebServer server;

  private PagesServer(WebServer server) {
    this.server = server;
  }

  static PagesServer start() {
    ValueCounts counts = new ValueCounts();
    Pages pages = new Pages(SeededLexicon::get, counts);
    JsonProblems json = new JsonProblems(JsonMapping.mapper());
    WebServer server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            JsonMapping.mapper(),
            new SimpleMeterRegistry(),
            new ErrorMapping(json, pages.problems(json)),
            List.of(pages, new ApiRoutes(SeededLexicon::get, counts, JsonMapping.mapper())));
    server.start();
    return new PagesServer(server);
  }

  /** As in {@code http://127.0.0.1:40123}. */
  String origin() {
    return "http://127.0.0.1:" + server.port();
  }

  @Override
  public void close() {
    server.close();
  }
}
