package org.hedgerow.web.contract;

import java.net.URI;
import java.net.http.HttpHeaders;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Exchanges made by hand; each step changes one thing of a sound one. */
record Traffic(Exchange exchange) {
  private static final String JSON = "application/json";

  /** A read that was answered as it should be. */
  static Traffic read(String address, String body) {
    Map<String, String> headers =
        Map.of(
            "Content-Type", JSON,
            "ETag", "\"1-abc\"",
            "Cache-Control", "no-cache",
            "Hedgerow-Edition", "1");
    return new Traffic(
        new Exchange("GET", uri(address), headers(Map.of()), "", 200, headers(headers), body));
  }

  /** A question sent as JSON and answered as it should be. */
  static Traffic question(String address, String requestBody, String body) {
    HttpHeaders json = headers(Map.of("Content-Type", JSON));
    return new Traffic(new Exchange("POST", uri(address), json, requestBody, 200, json, body));
  }

  Traffic method(String method) {
    return with(method, exchange.address(), exchange.status(), exchange.headers(), body());
  }

  Traffic address(String address) {
    return with(exchange.method(), uri(address), exchange.status(), exchange.headers(), body());
  }

  Traffic status(int status) {
    return with(exchange.method(), exchange.address(), status, exchange.headers(), body());
  }

  /** An empty value takes the header away. */
  Traffic header(String name, String value) {
    Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    exchange.headers().map().forEach((each, values) -> headers.put(each, values.get(0)));
    headers.put(name, value);
    headers.values().removeIf(String::isEmpty);
    return with(exchange.method(), exchange.address(), exchange.status(), headers(headers), body());
  }

  Traffic body(String body) {
    return with(exchange.method(), exchange.address(), exchange.status(), exchange.headers(), body);
  }

  Traffic replacing(String old, String fresh) {
    if (!body().contains(old)) {
      throw new IllegalArgumentException("There is no " + old + " in " + body());
    }
    return body(body().replace(old, fresh));
  }

  /** Refused with a problem of one type. */
  Traffic refused(int status, String slug) {
    return status(status)
        .header("Content-Type", "application/problem+json")
        .header("ETag", "")
        .body(
            """
            {"type": "/docs/problems#%s", "title": "No", "status": %d, "detail": "Do this.",
             "errors": [{"parameter": "phonogram", "detail": "Do that."}]}
            """
                .formatted(slug, status));
  }

  private String body() {
    return exchange.body();
  }

  private Traffic with(String method, URI address, int status, HttpHeaders headers, String body) {
    return new Traffic(
        new Exchange(
            method,
            address,
            exchange.requestHeaders(),
            exchange.requestBody(),
            status,
            headers,
            body));
  }

  private static URI uri(String address) {
    return URI.create("http://localhost:8080" + address);
  }

  private static HttpHeaders headers(Map<String, String> headers) {
    Map<String, List<String>> lists = new TreeMap<>();
    headers.forEach((name, value) -> lists.put(name, List.of(value)));
    return HttpHeaders.of(lists, (name, value) -> true);
  }
}
