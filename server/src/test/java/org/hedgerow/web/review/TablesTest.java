package org.hedgerow.web.review;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.testing.ReviewServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Many words at once, over HTTP. The words are invented. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TablesTest {
  private static final String TABLES = "/api/v1/contribution-tables";

  private ReviewServer server = ReviewServer.start();

  @AfterAll
  void stop() {
    server.close();
  }

  private HttpResponse<String> sent(String query, String table, String... headers)
      throws Exception {
    String[] all = Arrays.copyOf(headers, headers.length + 2);
    all[headers.length] = "Content-Type";
    all[headers.length + 1] = "text/csv; charset=utf-8";
    return server.send("mei", "POST", TABLES + query, table, all);
  }

  private JsonNode rows(String table) throws Exception {
    HttpResponse<String> answer = sent("", table);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    return server.json(answer).path("rows");
  }

  @Test
  void judgesEveryRow() throws Exception {
    JsonNode rows =
        rows(
            """
            spelling,accent,sounds,picturable,wanted-for,note
            Snoam,en-US,S N OW M,2,oa,"A ""thing"", small"
            ploath,,,,,
            boat,,,,,
            snoam,en-GB,,,,
            smoath,en-US,zz,,,
            brath,en-XX,,,,
            groath,en-US,G R OW TH,9,,
            droath,en-US,D R OW TH,x,zz 9,
            don't,,,,,
            """);
    assertThat(rows)
        .extracting(each -> each.path("verdict").asText())
        .containsExactly(
            "ready", "look", "refused", "twice", "refused", "refused", "refused", "refused",
            "refused");
    assertThat(rows)
        .extracting(each -> each.path("row").asInt())
        .containsExactly(2, 3, 4, 5, 6, 7, 8, 9, 10);
    assertThat(rows.at("/0/spelling").asText()).isEqualTo("Snoam");
    assertThat(rows.at("/1/guessed").asBoolean()).isTrue();
    assertThat(rows.at("/1/sounds").asText()).isEqualTo("p l oʊ θ");
    assertThat(rows.at("/3/faults/0/detail").asText()).contains("row 2");
    assertThat(rows.at("/4/faults/0/parameter").asText()).isEqualTo("sounds");
    assertThat(rows.at("/5/faults/0/parameter").asText()).isEqualTo("accent");
    assertThat(rows.at("/6/faults/0/parameter").asText()).isEqualTo("picturable");
    assertThat(rows.at("/7/faults"))
        .extracting(each -> each.path("parameter").asText())
        .containsExactly("picturable", "wanted-for");
  }

  /** As spreadsheet programs of other countries, and of other makers, write them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\uFEFFSpelling;Parts of speech;Sounds\r\nsnoath;noun verb;S N OW TH\r\n;;\r\n",
        "spelling\tSOUNDS\r\nsnoath\tS N OW TH",
        "\"spelling\",\"sounds\"\n\"snoath\",\"S N OW TH\"\n\n",
        "sounds , spelling\n S N OW TH , snoath \n"
      })
  void readsWhatSpreadsheetsWrite(String table) throws Exception {
    JsonNode rows = rows(table);
    assertThat(rows.size()).isEqualTo(1);
    assertThat(rows.at("/0/verdict").asText()).as(rows.toString()).isEqualTo("ready");
    assertThat(rows.at("/0/row").asInt()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | table | empty",
        "' ' | table | empty",
        "'word,sounds\nx,y' | row 1 | spelling, accent",
        "'sounds\nx' | row 1 | no column spelling",
        "'spelling,spelling\nx,y' | row 1 | twice",
        "'spelling,\nx,' | row 1 | no column",
        "'spelling' | table | no words",
        "'spelling,sounds\n\nab,x\ncd' | row 4 | Row 4 has 1 cells",
        "'spelling,sounds\nab,x,y,z' | row 2 | Row 2 has 4",
        "'spelling\n\"ab' | line | quotation marks",
        "'spelling\n\"ab\"c' | line | quotation marks"
      })
  void saysWhatIsWrongWithATable(String table, String place, String expected) throws Exception {
    HttpResponse<String> answer = sent("", table.replace("Row 2 has 4", ""));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(400);
    JsonNode problem = server.json(answer);
    assertThat(problem.path("type").asText()).endsWith("#invalid-table");
    assertThat(problem.at("/errors/0/parameter").asText()).startsWith(place);
    assertThat(problem.path("detail").asText()).contains(expected).doesNotContain("Exception");
  }

  @Test
  void tablesHaveAnEnd() throws Exception {
    HttpResponse<String> rows = sent("", "spelling\n" + "ab\n".repeat(2001));
    assertThat(rows.statusCode()).isEqualTo(400);
    assertThat(rows.body()).contains("more than 2,000 words");
    HttpResponse<String> bytes = sent("", "spelling\n" + "ab\n".repeat(400_000));
    assertThat(bytes.statusCode()).isEqualTo(413);
  }

  @Test
  void refusesWhatIsNoTable() throws Exception {
    assertThat(server.send("mei", "POST", TABLES, "{}").statusCode()).isEqualTo(415);
    assertThat(sent("?submit=yes", "spelling\nx").statusCode()).isEqualTo(400);
    assertThat(sent("?format=text", "spelling\nx").statusCode()).isEqualTo(406);
    assertThat(sent("", "spelling\nab" + (char) 0).body()).contains("aren't text");
    byte[] latin = "spelling\nna\u00EFve".getBytes(StandardCharsets.ISO_8859_1);
    HttpResponse<String> answer = server.sendBytes("mei", TABLES, latin, "text/csv");
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(answer.body()).contains("CSV UTF-8");
  }

  @Test
  void submitsTheGoodAndGivesTheRestBack() throws Exception {
    String table =
        """
        spelling,sounds,note
        troath,T R OW TH,
        skoath,,seen on a farm
        boat,B OW T,"=HYPERLINK(""http://x.example"")"
        troath,T R OW TH,-1
        """;
    assertThat(sent("", table).statusCode()).isEqualTo(200);
    assertThat(server.get("mei", "/api/v1/contributions?about=troath").body())
        .as("only judged")
        .contains("\"contributions\":[]");
    HttpResponse<String> submitted = sent("?submit=true", table);
    JsonNode view = server.json(submitted);
    assertThat(view.path("submitted").asInt()).isEqualTo(2);
    JsonNode guessed =
        server.json(
            server.get("rosa", "/api/v1/contributions/" + view.at("/rows/1/contribution").asInt()));
    assertThat(guessed.path("state").asText()).isEqualTo("submitted");
    assertThat(guessed.path("note").asText())
        .isEqualTo("How it is said is the bank’s guess. seen on a farm");

    HttpResponse<String> repeated = sent("?submit=true", table);
    assertThat(repeated.body()).as("the first ones, and no others").isEqualTo(submitted.body());

    HttpResponse<String> rest = sent("?submit=true", table, "Accept", "text/csv");
    assertThat(rest.headers().firstValue("Content-Type")).hasValue("text/csv;charset=utf-8");
    assertThat(rest.body().lines())
        .satisfiesExactly(
            header -> assertThat(header).isEqualTo("spelling,sounds,note,why"),
            line ->
                assertThat(line)
                    .startsWith("boat,B OW T,\"'=HYPERLINK(")
                    .contains("The bank holds"),
            line -> assertThat(line).startsWith("troath,T R OW TH,'-1,The word stands in row 2"));
    JsonNode again = rows(rest.body().replaceAll(",why|,(Another|\"?The)[^\\n]*", ""));
    assertThat(again.size()).isEqualTo(2);
  }

  /** Words that nobody has: the bank's, with another letter before. */
  @Test
  void judgesAThousandInUnderFiveSeconds() throws Exception {
    StringBuilder table = new StringBuilder("spelling,sounds,wanted-for\n");
    SeededLexicon.get().words().stream()
        .map(word -> "z" + word.spelling())
        .filter(word -> word.length() < 12 && SeededLexicon.get().word(word).isEmpty())
        .limit(1000)
        .forEach(word -> table.append(word).append(",,oa 1\n"));
    long start = System.nanoTime();
    HttpResponse<String> answer = sent("", table.toString());
    Duration taken = Duration.ofNanos(System.nanoTime() - start);
    assertThat(server.json(answer).path("rows").size()).isEqualTo(1000);
    assertThat(server.json(answer).at("/counts/look").asInt()).isGreaterThan(900);
    assertThat(taken).isLessThan(Duration.ofSeconds(5));
  }
}
