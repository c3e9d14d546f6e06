package org.hedgerow.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Signs in at a running demo with the passwords it printed, and makes tokens. */
final class DemoSignIn {
  private static final Pattern FORM_TOKEN =
      Pattern.compile("name=\"form-token\" value=\"([^\"]+)\"");

  private final String origin;
  private final String printed;

  DemoSignIn(String origin, String printed) {
    this.origin = origin;
    this.printed = printed;
  }

  /** A token that may do what the account may. */
  String token(String name, String role) throws IOException, InterruptedException {
    HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    send(client, form("/sign-in", "name=%s&password=%s".formatted(name, password(name)), client));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(origin + "/api/v1/account/tokens"))
            .header("Content-Type", "application/json")
            .header("Hedgerow-Form-Token", formToken("/account", client))
            .POST(BodyPublishers.ofString("{\"label\": \"examples\", \"role\": \"" + role + "\"}"))
            .build();
    return new ObjectMapper().readTree(send(client, request)).required("token").asText();
  }

  private HttpRequest form(String path, String fields, HttpClient client)
      throws IOException, InterruptedException {
    String body = fields + "&form-token=" + URLEncoder.encode(formToken(path, client), UTF_8);
    return HttpRequest.newBuilder(URI.create(origin + path))
        .header("Content-Type", "application/x-www-form-urlencoded")
        .POST(BodyPublishers.ofString(body))
        .build();
  }

  private String formToken(String path, HttpClient client)
      throws IOException, InterruptedException {
    String page = send(client, HttpRequest.newBuilder(URI.create(origin + path)).build());
    return found(FORM_TOKEN, page);
  }

  private String password(String name) {
    return URLEncoder.encode(
        found(Pattern.compile("(?m)^  " + name + " +(\\S.*?)  +\\S"), printed), UTF_8);
  }

  private static String found(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    if (!matcher.find()) {
      throw new AssertionError("There is no " + pattern + " in\n" + text);
    }
    return matcher.group(1);
  }

  private static String send(HttpClient client, HttpRequest request)
      throws IOException, InterruptedException {
    return client.send(request, BodyHandlers.ofString()).body();
  }
}
