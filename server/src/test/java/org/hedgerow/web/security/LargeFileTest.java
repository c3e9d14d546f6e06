package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.hedgerow.web.testing.PeopleServer.Client;
import org.junit.jupiter.api.Test;

/** Files that are too large are refused clearly, before anything is made of them. */
class LargeFileTest {
  private static final String BOUNDARY = "hawthorn";

  @Test
  void saysHowLargeAFileMayBe() throws Exception {
    try (PeopleServer server = PeopleServer.start()) {
      server.person("nour", Role.CONTRIBUTOR);
      Client nour = server.client().signIn("nour");
      assertThat(send(nour, 5_300_000).body()).contains("more than 5 MB");
      HttpResponse<String> refused = send(nour, 20_000_000);
      assertThat(refused.statusCode()).isEqualTo(413);
      assertThat(refused.body()).contains("at most 5 MB");
    }
  }

  private static HttpResponse<String> send(Client client, int bytes) throws Exception {
    String token = client.token("/contributions/new?kind=picture&word=goat");
    String body =
        field("form-token", token)
            + field("kind", "picture")
            + field("spelling", "goat")
            + part("name=\"file\"; filename=\"goat.png\"", "x".repeat(bytes))
            + "--"
            + BOUNDARY
            + "--\r\n";
    return client.send(
        "POST",
        "/contributions/drafts",
        body,
        "Content-Type",
        "multipart/form-data; boundary=" + BOUNDARY);
  }

  private static String field(String name, String value) {
    return part("name=\"" + name + "\"", value);
  }

  private static String part(String names, String value) {
    return "--%s\r\nContent-Disposition: form-data; %s\r\n\r\n%s\r\n"
        .formatted(BOUNDARY, names, value);
  }
}
