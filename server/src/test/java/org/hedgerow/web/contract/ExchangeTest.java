package org.hedgerow.web.contract;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Exchanges with a real server, which gives back what it gets. */
class ExchangeTest {
  private final HttpServer server;

  ExchangeTest() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", ExchangeTest::echo);
  }

  @BeforeEach
  void start() {
    server.start();
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  private static void echo(HttpExchange exchange) throws IOException {
    byte[] body = exchange.getRequestBody().readAllBytes();
    exchange.getResponseHeaders().add("Content-Type", "Text/Plain; charset=utf-8");
    exchange.sendResponseHeaders(203, body.length == 0 ? -1 : body.length);
    exchange.getResponseBody().write(body);
    exchange.close();
  }

  @Test
  void holdsWhatWasSentAndAnswered() throws Exception {
    Exchange exchange = Exchange.of("ʊ", sent("/words?a=1&b=x%20y+z%3D=", "ʊ"));
    assertThat(exchange.method()).isEqualTo("POST");
    assertThat(exchange.path()).isEqualTo("/words");
    assertThat(exchange.query())
        .containsExactly(entry("a", List.of("1")), entry("b", List.of("x y z==")));
    assertThat(Exchange.mediaType(exchange.requestHeaders())).hasValue("application/json");
    assertThat(Exchange.mediaType(exchange.headers())).hasValue("text/plain");
    assertThat(exchange.status()).isEqualTo(203);
    assertThat(exchange.requestBody()).isEqualTo("ʊ");
    assertThat(exchange.body()).isEqualTo("ʊ");
  }

  @Test
  void tellsParametersThatAreRepeatedOrEmpty() throws Exception {
    assertThat(Exchange.of(sent("/?a=1&&b&a=", "")).query())
        .containsExactly(entry("a", List.of("1", "")), entry("b", List.of("")));
    assertThat(Exchange.of(sent("/", "")).query()).isEmpty();
  }

  private HttpResponse<String> sent(String address, String body) throws Exception {
    URI uri = URI.create("http://127.0.0.1:%d%s".formatted(server.getAddress().getPort(), address));
    HttpRequest request =
        HttpRequest.newBuilder(uri)
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body, UTF_8))
            .build();
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }
}
