package org.hedgerow.web.testing;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.docs.DocsRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.site.ApiRoutes;
import org.hedgerow.web.site.Pages;

/** A server with the pages of the first edition and the pictures on them, on a free port. */
public final class PagesServer implements AutoCloseable {

  private final HttpClient client = HttpClient.newHttpClient();
  private final WebServer server;

  private PagesServer(WebServer server) {
    this.server = server;
  }

  public static PagesServer start() {
    return start(SeededLexicon.editions());
  }

  public static PagesServer start(Editions editions) {
    return start(editions, SeededComposer.orders());
  }

  public static PagesServer start(Editions editions, SentenceOrders orders) {
    ValueCounts counts = new ValueCounts();
    Pages pages = new Pages(editions, counts, orders);
    JsonProblems json = new JsonProblems(JsonMapping.mapper());
    WebServer server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            JsonMapping.mapper(),
            new SimpleMeterRegistry(),
            new ErrorMapping(json, pages.problems(json)),
            List.of(
                pages,
                new ApiRoutes(editions, counts, orders, JsonMapping.mapper()),
                new DocsRoutes()));
    server.start();
    return new PagesServer(server);
  }

  /** As in {@code http://127.0.0.1:40123}. */
  public String origin() {
    return "http://127.0.0.1:" + server.port();
  }

  /**
   * Asks for a page as a browser does; redirections are not followed.
   *
   * @param headers more of them, names and values by turns
   */
  public HttpResponse<String> get(String address, String... headers)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(origin() + address)).header("Accept", "text/html");
    if (headers.length > 0) {
      request.headers(headers);
    }
    return client.send(request.build(), BodyHandlers.ofString());
  }

  public HttpResponse<byte[]> bytes(String address) throws IOException, InterruptedException {
    return client.send(
        HttpRequest.newBuilder(URI.create(origin() + address)).build(), BodyHandlers.ofByteArray());
  }

  @Override
  public void close() {
    server.close();
  }
}
