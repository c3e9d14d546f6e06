package org.hedgerow.web.testing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hedgerow.operations.Role;
import org.hedgerow.web.contract.Exchange;
import org.hedgerow.web.contract.OpenApiContract;

/**
 * A server with people of every role, who send tokens. Whatever is asked of it here is held against
 * the OpenAPI document.
 */
public final class ReviewServer implements AutoCloseable {
  private final PeopleServer people = PeopleServer.start();
  private final HttpClient http = HttpClient.newHttpClient();
  private final OpenApiContract contract = OpenApiContract.published();
  private final ObjectMapper mapper = new ObjectMapper();
  private final Map<String, String> tokens = new HashMap<>();

  public static ReviewServer start() {
    ReviewServer server = new ReviewServer();
    server.person("mei", Role.CONTRIBUTOR);
    server.person("omar", Role.CONTRIBUTOR);
    server.person("rosa", Role.REVIEWER);
    server.person("tomasz", Role.REVIEWER);
    return server;
  }

  private void person(String name, Role role) {
    var actor = people.person(name, role);
    tokens.put(name, people.accounts().tokens().make(actor, "a script", role, 1).text());
  }

  /** Whoever asks; nobody is a visitor. */
  public HttpRequest.Builder request(String name, String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(people.origin() + path));
    if (tokens.containsKey(name)) {
      request.header("Authorization", "Bearer " + tokens.get(name));
    }
    for (int i = 0; i < headers.length; i += 2) {
      request.header(headers[i], headers[i + 1]);
    }
    return request;
  }

  public HttpResponse<String> get(String name, String path, String... headers) throws Exception {
    return send(request(name, path, headers).GET(), "");
  }

  public HttpResponse<String> send(
      String name, String method, String path, String body, String... headers) throws Exception {
    HttpRequest.Builder request = request(name, path, headers);
    if (!body.isEmpty() && !List.of(headers).contains("Content-Type")) {
      request.header("Content-Type", "application/json");
    }
    return send(request.method(method, BodyPublishers.ofString(body)), body);
  }

  private HttpResponse<String> send(HttpRequest.Builder request, String body) throws Exception {
    HttpResponse<String> response = http.send(request.build(), BodyHandlers.ofString());
    contract.require(Exchange.of(body, response));
    return response;
  }

  public HttpClient http() {
    return http;
  }

  /** Not held against the document: pictures aren't text. */
  public HttpResponse<String> sendBytes(String name, String path, byte[] body, String mediaType)
      throws Exception {
    return http.send(
        request(name, path, "Content-Type", mediaType)
            .POST(BodyPublishers.ofByteArray(body))
            .build(),
        BodyHandlers.ofString());
  }

  public HttpResponse<byte[]> bytes(String name, String path) throws Exception {
    return http.send(request(name, path).GET().build(), BodyHandlers.ofByteArray());
  }

  public JsonNode json(HttpResponse<String> response) throws IOException {
    return mapper.readTree(response.body());
  }

  /** The number of a contribution that was made, or that the same person had made before. */
  public int made(HttpResponse<String> response) throws IOException {
    if (response.statusCode() != 201 && response.statusCode() != 200) {
      throw new AssertionError(response.body());
    }
    return json(response).path("id").asInt();
  }

  @Override
  public void close() {
    people.close();
  }
}
