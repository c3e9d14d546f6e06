package org.hedgerow.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.MemoryEditions;
import org.hedgerow.web.JsonMapping;
import org.hedgerow.web.ListeningAddress;
import org.hedgerow.web.WebServer;
import org.hedgerow.web.http.AnswerCache;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Question;
import org.hedgerow.web.http.Read;
import org.hedgerow.web.http.ReadHandler;
import org.hedgerow.web.problems.ErrorMapping;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.query.Parameters;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Which answers are kept, and which are worked out before anybody asks for them. */
class ReadHandlerTest {
  private final ObjectMapper mapper = JsonMapping.mapper();
  private final MemoryEditions editions = new MemoryEditions();
  private final AtomicInteger workedOut = new AtomicInteger();
  private final AnswerCache cache = new AnswerCache();
  private final ReadHandler handler =
      new ReadHandler(editions, cache, new Counted(new WordRead(json(), editions)));
  private final HttpClient client = HttpClient.newHttpClient();
  private final WebServer server = server();

  /** A read that counts what is worked out. */
  private final class Counted implements Read {
    private final Read read;

    Counted(Read read) {
      this.read = read;
    }

    @Override
    public List<String> parameters() {
      return read.parameters();
    }

    @Override
    public Question understand(Lexicon lexicon, Map<String, String> path, Parameters parameters) {
      Question question = read.understand(lexicon, path, parameters);
      return new Question(
          question.key(),
          format -> {
            workedOut.incrementAndGet();
            return question.answer().apply(format);
          });
    }
  }

  private Json json() {
    return new Json(mapper);
  }

  private WebServer server() {
    JsonProblems problems = new JsonProblems(mapper);
    return new WebServer(
        new ListeningAddress("127.0.0.1", 0),
        mapper,
        new SimpleMeterRegistry(),
        new ErrorMapping(problems, problems),
        List.of(routes -> routes.get("/words/{spelling}", handler)));
  }

  @BeforeEach
  void start() {
    editions.beforeEach(next -> cache.prepare(next.edition()));
    editions.beforeEach(handler::prepare);
    server.start();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private HttpResponse<String> get(String path) throws Exception {
    URI address = URI.create("http://127.0.0.1:%d%s".formatted(server.port(), path));
    return client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString());
  }

  private int edition(String path) throws Exception {
    return mapper.readTree(get(path).body()).get("edition").asInt();
  }

  private void approve(String spelling) {
    Changes changes = Changes.of(List.of(editions.approved(spelling)), Set.of());
    editions.publish(spelling + " approved.", changes);
  }

  @Test
  void whatWasAskedBeforeIsNotWorkedOutAgain() throws Exception {
    String first = get("/words/boat").body();
    assertThat(get("/words/boat").body()).isEqualTo(first);
    assertThat(workedOut).hasValue(1);
  }

  @Test
  void theNextEditionIsAskedWhatWasAskedLatelyBeforeItIsShown() throws Exception {
    get("/words/boat");
    approve("boat");
    assertThat(workedOut).hasValue(2);
    HttpResponse<String> answer = get("/words/boat");
    assertThat(workedOut).hasValue(2);
    assertThat(mapper.readTree(answer.body()).get("edition").asInt()).isEqualTo(2);
    assertThat(mapper.readTree(answer.body()).get("word").get("status").asText())
        .isEqualTo("approved");
  }

  @Test
  void anEditionThatWasNamedStaysTheSame() throws Exception {
    assertThat(edition("/words/boat?edition=1")).isEqualTo(1);
    approve("boat");
    assertThat(edition("/words/boat?edition=1")).isEqualTo(1);
    assertThat(workedOut).hasValue(1);
  }

  @Test
  void whatOneEditionAnsweredGoesWhenTwoOthersHaveComeAfterIt() throws Exception {
    approve("ship");
    get("/words/boat");
    approve("ship");
    approve("ship");
    assertThat(workedOut).as("in editions 2, 3 and 4").hasValue(3);
    assertThat(edition("/words/boat?edition=3")).isEqualTo(3);
    assertThat(workedOut).hasValue(3);
    assertThat(edition("/words/boat?edition=2")).isEqualTo(2);
    assertThat(workedOut).hasValue(4);
  }

  @Test
  void aWordThatGoesIsGone() throws Exception {
    get("/words/boat");
    get("/words/ship");
    editions.publish("boat withdrawn.", Changes.of(List.of(), Set.of("boat")));
    assertThat(get("/words/boat").statusCode()).isEqualTo(404);
    assertThat(edition("/words/ship")).isEqualTo(2);
    assertThat(workedOut).hasValue(3);
  }
}
