package org.hedgerow.web.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.Test;

/**
 * Thousands of requests put together at random from what is right and what is not. None may be
 * answered 500, and those that are accepted must be as the document lists them.
 */
class NonsenseTest {

  private static final int REQUESTS = 3000;
  private static final long SEED = 20_261_125;

  private static final List<String> PATHS =
      List.of(
          "/words",
          "/words",
          "/words",
          "/phonograms",
          "/sounds",
          "/sounds/OW",
          "/sounds/%20",
          "/words/wool",
          "/words/%C5%BFhip",
          "/nothing");

  private static final List<String> NAMES =
      List.of(
          "phonogram",
          "phonogram",
          "value",
          "accent",
          "sound",
          "shape",
          "letters",
          "syllables",
          "position",
          "commonness",
          "status",
          "include",
          "rules",
          "taught",
          "sort",
          "limit",
          "after",
          "edition",
          "format",
          "Phonogram",
          "q",
          "");

  private static final List<String> VALUES =
      List.of(
          "oa",
          "OO",
          "i-e",
          "sh,ch",
          "oo2",
          "oo02",
          "1",
          "2",
          "0",
          "-1",
          "3-5",
          "5-3",
          "007",
          "en-US",
          "en-us,en-US",
          "ʃ",
          "SH",
          "tS",
          "S",
          "k s",
          "cvc",
          "CVCC",
          "v",
          "satpin",
          "start",
          "end",
          "any",
          "seeded",
          "approved",
          "names,inflected",
          "inflected,,",
          "no-ck",
          "ck,x",
          "no-reduced-vowels",
          "default",
          "letters",
          "50",
          "500",
          "9223372036854775808",
          "json",
          "csv",
          "text",
          "AAAAAQAAAAEAAAAB",
          "",
          " ",
          "\u0000",
          "\u212A",
          "ı",
          "İ",
          "é",
          "💩",
          "\uFFFF",
          "%",
          "<b>",
          "'; --",
          "null",
          "NaN",
          "1e3",
          "١",
          "．",
          "a".repeat(200),
          "[]",
          "{}",
          "*");

  private final Random random = new Random(SEED);
  private final ObjectMapper mapper = new ObjectMapper();

  @Test
  void isNeverAnsweredWithAFault() throws Exception {
    int accepted = 0;
    try (ApiServer server = ApiServer.start()) {
      for (int i = 0; i < REQUESTS; i++) {
        HttpResponse<String> response =
            i % 4 == 0
                ? server.post("/api/v1/" + any(List.of("word-checks", "alignments")), body())
                : server.get("/api/v1" + any(PATHS) + query());
        assertThat(response.statusCode()).isLessThan(500);
        accepted += response.statusCode() == 200 ? 1 : 0;
      }
    }
    assertThat(accepted).isGreaterThan(REQUESTS / 20);
  }

  private String query() {
    List<String> pairs = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      pairs.add(encoded(any(NAMES)) + "=" + encoded(any(VALUES)));
    }
    return pairs.isEmpty() ? "" : "?" + String.join("&", pairs);
  }

  private String body() throws Exception {
    Map<String, Object> body = new LinkedHashMap<>();
    List<String> names =
        List.of(
            "words",
            "spelling",
            "sounds",
            "phonogram",
            "value",
            "accents",
            "accent",
            "rules",
            "taught");
    body.put(any(names.subList(0, 2)), any(List.of(List.of("wool"), "wool")));
    for (int i = random.nextInt(3); i > 0; i--) {
      body.put(any(names), value());
    }
    return mapper.writeValueAsString(body);
  }

  private Object value() {
    return switch (random.nextInt(6)) {
      case 0 -> List.of();
      case 1 -> List.of(any(VALUES), any(VALUES));
      case 2 -> random.nextInt();
      case 3 -> Map.of(any(VALUES), any(VALUES));
      case 4 -> random.nextDouble();
      default -> any(VALUES);
    };
  }

  private <T> T any(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, UTF_8);
  }
}
