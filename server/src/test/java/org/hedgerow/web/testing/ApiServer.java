package org.hedgerow.web.testing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.HealthRoutes;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.MetricsRoutes;
import org.hedgerow.web.SettableHealth;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;
import org.hedgerow.web.docs.DocsRoutes;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.ValueCounts;
import org.hedgerow.web.sentences.SentenceOrders;
import org.hedgerow.web.site.ApiRoutes;

/**
 * A server for the first edition, without a database, on a port of its own. Whatever is asked of it
 * here is held against the OpenAPI document.
 */
public final class ApiServer implements AutoCloseable {

  private final ObjectMapper mapper = JsonMapping.mapper();
  private final OpenApiContract contract = OpenApiContract.published();
  private final HttpClient client = HttpClient.newHttpClient();
  private final ApiRoutes routes;
  private final WebServer server;

  private ApiServer(Editions editions, SentenceOrders orders) {
    PrometheusMeterRegistry meters = new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
    JsonProblems problems = new JsonProblems(mapper);
    this.routes = new ApiRoutes(editions, new ValueCounts(), orders, mapper);
    this.server =
        new WebServer(
            new ListeningAddress("127.0.0.1", 0),
            mapper,
            meters,
            new ErrorMapping(problems, problems),
            List.of(
                new HealthRoutes(new SettableHealth()),
                new MetricsRoutes(meters, asker -> true),
                routes,
                new DocsRoutes()));
  }

  public static ApiServer start() {
    return start(SeededLexicon.editions());
  }

  public static ApiServer start(Editions editions) {
    return start(editions, SeededComposer.orders());
  }

  public static ApiServer start(Editions editions, SentenceOrders orders) {
    ApiServer api = new ApiServer(editions, orders);
    api.server.start();
    return api;
  }

  public int port() {
    return server.port();
  }

  /** What the server goes through before it starts, an error in which is no reason not to start. */
  public List<Runnable> rehearsals() {
    return routes.rehearsals();
  }

  public HttpResponse<String> get(String path, String... headers) throws Exception {
    return send(request(path, headers).GET(), "");
  }

  public HttpResponse<String> head(String path, String... headers) throws Exception {
    return send(request(path, headers).method("HEAD", BodyPublishers.noBody()), "");
  }

  public HttpResponse<String> send(String method, String path) throws Exception {
    return send(request(path).method(method, BodyPublishers.noBody()), "");
  }

  public HttpResponse<String> options(String path, String... headers) throws Exception {
    return send(request(path, headers).method("OPTIONS", BodyPublishers.noBody()), "");
  }

  public HttpResponse<String> post(String path, String body, String... headers) throws Exception {
    HttpRequest.Builder request = request(path, headers);
    if (headers.length == 0) {
      request.header("Content-Type", "application/json");
    }
    return send(request.POST(BodyPublishers.ofString(body)), body);
  }

  HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path));
    for (int i = 0; i < headers.length; i += 2) {
      request.header(headers[i], headers[i + 1]);
    }
    return request;
  }

  private HttpResponse<String> send(HttpRequest.Builder request, String body) throws Exception {
    HttpResponse<String> response = client.send(request.build(), BodyHandlers.ofString());
    contract.require(Exchange.of(body, response));
    return response;
  }

  /** The answer as it came over the wire, which may be compressed. */
  public HttpResponse<byte[]> bytes(String path, String... headers) throws Exception {
    return client.send(request(path, headers).build(), BodyHandlers.ofByteArray());
  }

  public JsonNode json(HttpResponse<String> response) throws IOException {
    return mapper.readTree(response.body());
  }

  public JsonNode json(String path) throws Exception {
    return json(get(path));
  }

  @Override
  public void close() {
    server.close();
  }
}
