package org.hedgerow.web.editions;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.Materials;
import org.hedgerow.lexicon.MemoryEditions;
import org.hedgerow.web.testing.ApiServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Old editions, and the record of all: three of them, made from the first by hand. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EditionsTest {
  private static final String SHIPS = "/api/v1/words?phonogram=sh&limit=5";

  private final MemoryEditions editions = new MemoryEditions();
  private ApiServer api;

  @BeforeAll
  void start() {
    editions
        .publish("fish <b>approved</b> & more.", changes("fish"))
        .publish("ship and shell approved, shop withdrawn.", changes("ship", "shell").and(gone()));
    api = ApiServer.start(editions);
  }

  private Changes changes(String... spellings) {
    return Changes.of(List.of(spellings).stream().map(editions::approved).toList(), Set.of());
  }

  private static Changes gone() {
    return Changes.of(List.of(), Set.of("shop"));
  }

  @AfterAll
  void stop() {
    api.close();
  }

  private static List<String> spellings(JsonNode words) {
    List<String> spellings = new ArrayList<>();
    words.forEach(word -> spellings.add(word.get("spelling").asText()));
    return spellings;
  }

  @Test
  void answersFromTheNewestWhereNoneIsNamed() throws Exception {
    JsonNode list = api.json(SHIPS);
    assertThat(list.get("edition").asInt()).isEqualTo(3);
    assertThat(spellings(list.get("words"))).startsWith("fish", "ship", "shell");
    assertThat(api.get(SHIPS + "&edition=3").body()).isEqualTo(api.get(SHIPS).body());
  }

  @Test
  void anOldEditionAnswersAsItDidThen() throws Exception {
    JsonNode first = api.json(SHIPS + "&edition=1");
    assertThat(first.get("edition").asInt()).isEqualTo(1);
    assertThat(first.get("query").has("edition")).isFalse();
    assertThat(
            api.json("/api/v1/words?phonogram=sh&edition=1&status=approved").get("total").asInt())
        .isZero();
    assertThat(
            api.json("/api/v1/words?phonogram=sh&edition=2&status=approved").get("total").asInt())
        .isEqualTo(1);
    assertThat(api.get("/api/v1/words/shop?edition=2").statusCode()).isEqualTo(200);
    assertThat(api.get("/api/v1/words/shop?edition=3").statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/v1/phonograms",
        "/api/v1/words",
        "/api/v1/words/ship",
        "/api/v1/sounds",
        "/api/v1/sounds/SH",
        "/api/v1/rules",
        "/api/v1/sequences",
        "/api/v1/sight-words",
        "/api/v1/needs"
      })
  void everyReadTakesAnEdition(String path) throws Exception {
    for (int edition = 1; edition <= 3; edition++) {
      HttpResponse<String> answer = api.get(path + "?edition=" + edition);
      assertThat(api.json(answer).get("edition").asInt()).isEqualTo(edition);
      assertThat(answer.headers().firstValue("ETag").orElse("")).startsWith("\"" + edition + "-");
    }
    HttpResponse<String> none = api.get(path + "?edition=4");
    assertThat(none.statusCode()).isEqualTo(404);
    assertThat(none.body()).contains("unknown-edition", "There is no edition 4; the newest is 3.");
    assertThat(api.get(path + "?edition=nine").body()).contains("invalid-parameter");
  }

  @Test
  void questionsTakeAnEdition() throws Exception {
    String body = "{\"words\": [\"shop\"]}";
    assertThat(api.post("/api/v1/word-checks?edition=2", body).body())
        .contains("\"edition\":2")
        .doesNotContain("unknown-word");
    assertThat(api.post("/api/v1/word-checks", body).body())
        .contains("\"edition\":3", "unknown-word");
    assertThat(api.post("/api/v1/word-checks?edition=8", body).statusCode()).isEqualTo(404);
    String ship = "{\"spelling\": \"ship\", \"accent\": \"en-US\"}";
    assertThat(api.post("/api/v1/alignments?edition=1", ship).body()).contains("\"edition\":1");
  }

  @Test
  void aListGoesOnInTheEditionInWhichItWasBegun() throws Exception {
    String next = api.json(SHIPS + "&edition=1").get("next").asText();
    JsonNode more = api.json(SHIPS + "&after=" + next);
    assertThat(more.get("edition").asInt()).isEqualTo(1);
    assertThat(api.get(SHIPS + "&edition=1&after=" + next).body())
        .isEqualTo(api.get(SHIPS + "&after=" + next).body());
    assertThat(api.get(SHIPS + "&edition=2&after=" + next).body()).contains("invalid-cursor");
    String link = api.get(SHIPS + "&edition=1").headers().firstValue("Link").orElseThrow();
    assertThat(link).contains("edition=1");
  }

  @Test
  void tellsTheHistoryOfAWord() throws Exception {
    JsonNode ship = api.json("/api/v1/words/ship").get("word");
    assertThat(ship.get("since").asInt()).isEqualTo(3);
    assertThat(ship.get("history")).hasSize(1);
    assertThat(ship.get("history").get(0).get("by").asText()).isEqualTo("Mary Bloggs");
    assertThat(api.json("/api/v1/words/ship?edition=2").get("word").has("history")).isFalse();
    assertThat(api.json("/api/v1/words/boat").get("word").has("history")).isFalse();
  }

  @Test
  void listsEditionsTheNewestFirst() throws Exception {
    JsonNode all = api.json("/api/v1/editions");
    assertThat(all.get("newest").asInt()).isEqualTo(3);
    assertThat(all.get("editions").findValues("edition"))
        .extracting(JsonNode::asInt)
        .containsExactly(3, 2, 1);
    assertThat(all.has("next")).isFalse();
    HttpResponse<String> two = api.get("/api/v1/editions?limit=2");
    assertThat(api.json(two).get("next").asInt()).isEqualTo(2);
    assertThat(two.headers().firstValue("Link"))
        .hasValueSatisfying(link -> assertThat(link).contains("/api/v1/editions?after=2&limit=2"));
    assertThat(api.json("/api/v1/editions?limit=2&after=2").get("editions")).hasSize(1);
  }

  @Test
  void tellsOfOneEdition() throws Exception {
    JsonNode second = api.json("/api/v1/editions/2").get("edition");
    assertThat(second.get("summary").asText()).isEqualTo("fish <b>approved</b> & more.");
    assertThat(second.get("words").asInt()).isEqualTo(1);
    assertThat(second.get("at").asText()).isEqualTo("2026-05-01T08:00:02Z");
  }

  @Test
  void tellsWhatAnEditionChanged() throws Exception {
    JsonNode changes = api.json("/api/v1/editions/3/changes").get("changes");
    assertThat(changes.findValues("word"))
        .extracting(JsonNode::asText)
        .containsExactly("shell", "ship", "shop");
    assertThat(changes.get(1).at("/before/status").asText()).isEqualTo("seeded");
    assertThat(changes.get(1).at("/after/status").asText()).isEqualTo("approved");
    assertThat(changes.get(2).has("after")).isFalse();
    assertThat(api.json("/api/v1/editions/1/changes").get("changes")).isEmpty();
    JsonNode first = api.json("/api/v1/editions/3/changes?limit=1");
    assertThat(first.get("next").asText()).isEqualTo("shell");
    JsonNode rest = api.json("/api/v1/editions/3/changes?after=shell");
    assertThat(rest.get("changes")).hasSize(2);
    assertThat(rest.has("next")).isFalse();
  }

  /** Rules, a sequence, a sentence and a picture come; then one is changed and others go. */
  @Test
  void tellsWhatAnEditionChangedBesideWords() throws Exception {
    MemoryEditions more = new MemoryEditions();
    more.publish("All kinds.", Materials.COME).publish("Some go.", Materials.CHANGED);
    try (ApiServer server = ApiServer.start(more)) {
      JsonNode come = server.json("/api/v1/editions/2/changes").get("material");
      assertThat(come.at("/rules/0/name").asText()).isEqualTo("gentle");
      assertThat(come.at("/rules/0").has("before")).isFalse();
      assertThat(come.at("/sequences/0/after/steps/0/0").asText()).isEqualTo("sh 1");
      assertThat(come.at("/sightWords/0/after/words/1").asText()).isEqualTo("said");
      assertThat(come.at("/sentences/0/name").asText()).isEqualTo(Materials.TEXT);
      assertThat(come.at("/sentences/0/after/phonogram").asText()).isEqualTo("sh");
      assertThat(come.at("/pictures/0/id").asText()).isEqualTo("a-ship");
      JsonNode gone = server.json("/api/v1/editions/3/changes").get("material");
      assertThat(gone.at("/rules/0/before/title").asText()).isEqualTo("Gentle");
      assertThat(gone.at("/rules/0/after/title").asText()).isEqualTo("Gentler");
      assertThat(gone.at("/sequences/0").has("after")).isFalse();
      assertThat(gone.at("/sightWords/0/before/words/0").asText()).isEqualTo("the");
      assertThat(gone.at("/sightWords/0/after/words/1").asText()).isEqualTo("was");
      assertThat(gone.at("/sentences/0").has("after")).isFalse();
      assertThat(gone.get("pictures")).isEmpty();
      assertThat(server.json("/api/v1/editions/1/changes").at("/material/rules")).isEmpty();
      assertThat(server.json("/api/v1/editions/2/changes?after=a").has("material")).isFalse();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/api/v1/editions/4,               404, unknown-edition",
    "/api/v1/editions/4/changes,       404, unknown-edition",
    "/api/v1/editions/0,               400, invalid-parameter",
    "/api/v1/editions/x/changes,       400, invalid-parameter",
    "/api/v1/editions?limit=0,         400, invalid-parameter",
    "/api/v1/editions?after=x,         400, invalid-parameter",
    "/api/v1/editions?edition=1,       400, unknown-parameter",
    "/api/v1/editions?format=csv,      406, unsupported-format",
    "/editions.atom?x=1,               400, unknown-parameter"
  })
  void refusesWhatItDoesNotUnderstand(String path, int status, String type) throws Exception {
    HttpResponse<String> answer = api.get(path);
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(answer.body()).contains(type);
  }

  @Test
  void whoHasTheAnswerGetsNone() throws Exception {
    for (String path : List.of("/api/v1/editions", "/api/v1/editions/2", "/editions.atom")) {
      String tag = api.get(path).headers().firstValue("ETag").orElseThrow();
      assertThat(api.get(path, "If-None-Match", tag).statusCode()).isEqualTo(304);
    }
  }

  /** RFC 4287, section 4.1: what a feed and its entries must have. */
  @Test
  void feedIsSoundAtom() throws Exception {
    HttpResponse<String> answer = api.get("/editions.atom");
    assertThat(answer.headers().firstValue("Content-Type").orElse(""))
        .startsWith("application/atom+xml");
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document feed =
        factory.newDocumentBuilder().parse(new InputSource(new StringReader(answer.body())));
    String atom = "http://www.w3.org/2005/Atom";
    assertThat(feed.getDocumentElement().getNamespaceURI()).isEqualTo(atom);
    assertThat(texts(feed.getElementsByTagNameNS(atom, "id")))
        .hasSize(4)
        .doesNotHaveDuplicates()
        .allMatch(id -> id.startsWith("urn:uuid:"));
    assertThat(texts(feed.getElementsByTagNameNS(atom, "title")))
        .containsExactly(
            "Hedgerow: editions of the word bank", "Edition 3", "Edition 2", "Edition 1");
    assertThat(texts(feed.getElementsByTagNameNS(atom, "updated"))).hasSize(4);
    assertThat(texts(feed.getElementsByTagNameNS(atom, "summary")))
        .contains("fish <b>approved</b> & more.");
    assertThat(texts(feed.getElementsByTagNameNS(atom, "name"))).contains("Mary Bloggs");
    assertThat(api.get("/editions.atom").body()).isEqualTo(answer.body());
  }

  private static List<String> texts(NodeList nodes) {
    return IntStream.range(0, nodes.getLength())
        .mapToObj(place -> nodes.item(place).getTextContent())
        .toList();
  }
}
