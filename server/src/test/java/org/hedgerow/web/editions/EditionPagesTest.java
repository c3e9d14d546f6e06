package org.hedgerow.web.editions;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.Materials;
import org.hedgerow.lexicon.MemoryEditions;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What pages say of old editions, and of what was changed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EditionPagesTest {
  private static final String OLD = "class=\"old-edition\"";
  private static final String LIST = "/?phonogram=sh&value=1";

  private final MemoryEditions editions = new MemoryEditions();
  private PagesServer server;

  @BeforeAll
  void start() {
    editions
        .publish("fish approved <script>.", approved("fish"))
        .publish("shop withdrawn.", Changes.of(List.of(), Set.of("shop")));
    server = PagesServer.start(editions);
  }

  private Changes approved(String spelling) {
    return Changes.of(List.of(editions.approved(spelling)), Set.of());
  }

  @AfterAll
  void stop() {
    server.close();
  }

  private String page(String address) throws Exception {
    return server.get(address).body();
  }

  @Test
  void aListOfAnOldEditionSaysSo() throws Exception {
    assertThat(page(LIST)).doesNotContain(OLD, "word-shop");
    assertThat(page(LIST + "&edition=3")).doesNotContain(OLD);
    String old = page(LIST + "&edition=2");
    assertThat(old)
        .contains(OLD, "word-shop", "edition 2", "The newest is edition 3")
        .contains("<a href=\"/?phonogram=sh&amp;value=1\">see it as it is now</a>");
  }

  @Test
  void linksOfAnOldListStayInItsEdition() throws Exception {
    String old = page(LIST + "&edition=2");
    assertThat(old)
        .contains("/words.csv?phonogram=sh&amp;value=1&amp;edition=2")
        .contains("name=\"edition\" value=\"2\"")
        .doesNotContain("take away");
    String next = old.replaceAll("(?s).*<a class=\"button\" href=\"([^\"]*after[^\"]*)\".*", "$1");
    assertThat(page(next.replace("&amp;", "&"))).contains(OLD);
    assertThat(page(LIST + "&edition=2&word=shop")).contains("/words/shop?edition=2");
  }

  @Test
  void aWordOfAnOldEditionSaysSo() throws Exception {
    assertThat(server.get("/words/shop").statusCode()).isEqualTo(404);
    assertThat(page("/words/shop?edition=2"))
        .contains(OLD, "<a href=\"/words/shop\">see it as it is now</a>");
    assertThat(page("/words/fish")).contains("Its history", "/editions/2", "Mary Bloggs");
    assertThat(page("/words/fish?edition=1")).doesNotContain("Its history");
  }

  @Test
  void filesOfAnOldEditionHoldWhatItHeld() throws Exception {
    assertThat(page("/words.txt?phonogram=sh&value=1&edition=2")).contains("\nshop\n");
    assertThat(page("/words.txt?phonogram=sh&value=1")).doesNotContain("\nshop\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/", "/?find=sh", "/?accent=en-GB", "/sequences", "/needs"})
  void plansAndTheChartTakeAnEdition(String address) throws Exception {
    String before = address + (address.contains("?") ? "&" : "?") + "edition=";
    assertThat(page(address)).doesNotContain(OLD, "edition=");
    assertThat(page(before + "3")).doesNotContain(OLD).contains("&amp;edition=3\"");
    assertThat(page(before + "2"))
        .contains(OLD, "The newest is edition 3", "name=\"edition\" value=\"2\"")
        .contains("phonogram=sh&amp;value=1", "&amp;edition=2\"");
    assertThat(server.get(before + "9").statusCode()).isEqualTo(404);
    assertThat(server.get(before + "x").statusCode()).isEqualTo(400);
  }

  /** Edition 3 withdrew “shop”, so the list of sh has one word less. */
  @Test
  void theChartOfAnOldEditionCountsItsWords() throws Exception {
    assertThat(words(page("/?find=sh&edition=2"))).isEqualTo(words(page("/?find=sh")) + 1);
  }

  private static int words(String chart) {
    String count =
        chart.replaceAll("(?s).*phonogram=sh&amp;value=1.*?class=\"count\">(\\d+)<.*", "$1");
    return Integer.parseInt(count);
  }

  @Test
  void tellsWhatEditionsChanged() throws Exception {
    assertThat(page("/editions"))
        .contains("Edition 3", "shop withdrawn.", "Decided by", "1 word changed", "/editions.atom")
        .contains("fish approved &lt;script&gt;.")
        .doesNotContain("<script>.");
    assertThat(page("/editions/2")).contains("fish", "approved by teachers");
    assertThat(page("/editions/3")).contains("/words/shop?edition=2", "withdrawn");
    assertThat(page("/editions/1")).contains("It is where all begins.");
  }

  @Test
  void tellsWhatEditionsChangedBesideWords() throws Exception {
    MemoryEditions more = new MemoryEditions();
    more.publish("All kinds.", Materials.COME).publish("Some go.", Materials.CHANGED);
    try (PagesServer pages = PagesServer.start(more)) {
      assertThat(pages.get("/editions/2").body())
          .contains("Reading rules: <bdi>Gentle</bdi>", "x allowed", "step 1: sh")
          .contains("Sight words: <bdi>A few</bdi>", "with the, said")
          .contains("Sentence: <bdi>" + Materials.TEXT, "for sh", "/api/v1/pictures/a-ship");
      assertThat(pages.get("/editions/3").body())
          .contains("called “Gentler”, before “Gentle”", "x no longer allowed", "ck allowed")
          .contains("<li>with was</li>", "<li>without the</li>")
          .contains("withdrawn")
          .doesNotContain("a-ship");
      assertThat(pages.get("/sight-words?edition=2").body())
          .contains(OLD, "The newest is edition 3", "A few", "/words/the?edition=2\"")
          .contains("name=\"edition\" value=\"2\"");
      assertThat(pages.get("/sight-words?edition=1").body()).doesNotContain("A few");
      assertThat(pages.get("/sight-words?edition=9").statusCode()).isEqualTo(404);
      assertThat(pages.get("/sight-words").body()).contains("A few").doesNotContain("edition=");
      assertThat(pages.get("/editions/1").body()).doesNotContain("Beside words");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/editions/9,                    404",
    "/editions/x,                    400",
    "/editions?after=x,              400",
    "/?phonogram=sh&value=1&edition=9, 404",
    "/words/ship?edition=9,          404",
    "/words/ship?edition=x,          400",
    "/words.csv?phonogram=sh&edition=9, 404"
  })
  void saysWhatIsWrong(String address, int status) throws Exception {
    var answer = server.get(address);
    assertThat(answer.statusCode()).isEqualTo(status);
    assertThat(answer.body()).contains("<h1");
  }
}
