package org.hedgerow.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.net.http.HttpResponse;
import java.time.Duration;
import javax.imageio.ImageIO;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One account can't keep a server busy with pictures and submissions; others go on meanwhile. */
class RateLimitTest {
  private static final String CONTRIBUTIONS = "/api/v1/contributions";
  private static final String TABLE = "/contributions/table";
  private static final String DRAFT =
      "{\"proposal\": {\"kind\": \"word\", \"spelling\": \"broam\"}}";

  private PeopleServer server;
  private PeopleServer.Program nour;
  private PeopleServer.Program omar;

  @BeforeEach
  void start() {
    server = PeopleServer.start();
    nour = server.program(server.person("nour", Role.CONTRIBUTOR));
    omar = server.program(server.person("omar", Role.CONTRIBUTOR));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @Test
  void submissionsAreLimitedForEachAccountAndGoOnAfterAWhile() throws Exception {
    for (int i = 0; i < RateLimits.SUBMISSIONS; i++) {
      assertThat(nour.send("POST", CONTRIBUTIONS, DRAFT).statusCode()).isIn(200, 201);
    }
    HttpResponse<String> refused = nour.send("POST", CONTRIBUTIONS, DRAFT);
    assertThat(refused.statusCode()).isEqualTo(429);
    assertThat(refused.headers().firstValueAsLong("Retry-After").orElseThrow()).isBetween(1L, 60L);
    assertThat(refused.body()).contains("too-many-attempts", "Try again in 1 second");
    assertThat(
            nour.send("POST", CONTRIBUTIONS + "/1/submission", "", "If-Match", "\"1\"")
                .statusCode())
        .isEqualTo(429);
    assertThat(nour.get(CONTRIBUTIONS).statusCode()).isEqualTo(200);
    assertThat(omar.send("POST", CONTRIBUTIONS, DRAFT).statusCode()).isEqualTo(201);

    server.clock().goOn(Duration.ofMinutes(1));
    assertThat(nour.send("POST", CONTRIBUTIONS, DRAFT).statusCode()).isEqualTo(200);
  }

  @Test
  void formsOfPagesCountTooAndKeepWhatWasTyped() throws Exception {
    PeopleServer.Client client = server.client().signIn("nour");
    String token = client.token(TABLE);
    for (int i = 0; i < RateLimits.SUBMISSIONS; i++) {
      client.post(TABLE, token, "words", "boat", "do", "judge");
    }
    HttpResponse<String> table = client.post(TABLE, token, "words", "boat", "do", "judge");
    assertThat(table.statusCode()).isEqualTo(429);
    assertThat(table.headers().firstValue("Retry-After")).isPresent();
    assertThat(table.body()).contains("too many submissions", ">boat</textarea>");
    HttpResponse<String> word =
        client.post(
            "/contributions/drafts",
            token,
            "kind",
            "word",
            "spelling",
            "broam",
            "note",
            "at home",
            "accent-0",
            "en-US",
            "sounds-0",
            "b ɹ oʊ m",
            "do",
            "submit");
    assertThat(word.statusCode()).isEqualTo(429);
    assertThat(word.body()).contains("too many submissions", "at home");
    assertThat(client.get("/contributions").body()).as("it is kept as a draft").contains("broam");
  }

  @Test
  void uploadsAreLimitedForEachAccount() throws Exception {
    PeopleServer.Client asNour = server.client().signIn("nour");
    for (int i = 0; i < RateLimits.UPLOADS; i++) {
      assertThat(upload(asNour)).isEqualTo(303);
    }
    assertThat(upload(asNour)).isEqualTo(429);
    assertThat(nour.send("POST", "/api/v1/pictures", "x", "Content-Type", "image/png").statusCode())
        .isEqualTo(429);
    assertThat(upload(server.client().signIn("omar"))).isEqualTo(303);
  }

  private static int upload(PeopleServer.Client client) throws Exception {
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(300, 300, BufferedImage.TYPE_INT_RGB), "png", png);
    return client
        .upload(
            "/contributions/drafts",
            "/contributions",
            png.toByteArray(),
            "kind",
            "picture",
            "spelling",
            "boat",
            "do",
            "save")
        .statusCode();
  }
}
