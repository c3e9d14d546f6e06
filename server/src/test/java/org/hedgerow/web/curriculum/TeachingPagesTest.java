package org.hedgerow.web.curriculum;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An administrator keeps the reading rules, the orders of teaching and the sight words. */
class TeachingPagesTest {
  private static final String RULES = "/centre/rules/edit";
  private static final String SEQUENCES = "/centre/sequences/edit";

  private static final String SIGHT_WORDS = "/centre/sight-words/edit";

  private PeopleServer server;
  private PeopleServer.Client ada;

  @BeforeEach
  void start() throws Exception {
    server = PeopleServer.start();
    server.person("ada", Role.ADMINISTRATOR);
    ada = server.client().signIn("ada");
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private HttpResponse<String> saveRules(String name, String title, String seen, String... others)
      throws Exception {
    String[] fields = new String[6 + others.length];
    System.arraycopy(new String[] {"name", name, "title", title, "seen", seen}, 0, fields, 0, 6);
    System.arraycopy(others, 0, fields, 6, others.length);
    return ada.form(RULES, RULES, fields);
  }

  @Test
  void aNewSetCanBeChosenAtOnceAndNotInTheEditionBefore() throws Exception {
    HttpResponse<String> saved = saveRules("gentle", "Gentle <b>rules</b>", "", "switch", "x");
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(saved.headers().firstValue("Location"))
        .contains("/centre/rules?edition=2&name=gentle");
    assertThat(ada.get("/centre/rules?edition=2").body())
        .contains("Edition 2 has it", "Gentle &lt;b&gt;rules&lt;/b&gt;")
        .doesNotContain("<b>rules");
    assertThat(ada.get("/api/v1/rules").body()).contains("\"name\":\"gentle\"");
    assertThat(ada.get("/api/v1/rules?edition=1").body()).doesNotContain("gentle");
    assertThat(ada.get("/api/v1/words?phonogram=sh&rules=gentle&limit=1").statusCode())
        .isEqualTo(200);
  }

  @Test
  void whatWasTypedStaysWhenSomethingIsWrong() throws Exception {
    HttpResponse<String> refused =
        ada.form(
            SEQUENCES,
            SEQUENCES,
            "name",
            "autumn",
            "title",
            "Autumn",
            "seen",
            "",
            "steps",
            "sh, ch\nzz 4\noo");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains("Step 2: “zz 4” is no phonogram that we know", "sh, ch\nzz 4\noo", "Autumn");
    assertThat(ada.get("/api/v1/sequences").body()).doesNotContain("\"name\":\"autumn\"");
  }

  @Test
  void ofTwoWhoChangeTheSameTheSecondSeesItAndLosesNothing() throws Exception {
    saveRules("gentle", "Gentle", "", "switch", "x");
    HttpResponse<String> late = saveRules("gentle", "Mine", "", "switch", "ck");
    assertThat(late.statusCode()).isEqualTo(412);
    assertThat(late.body()).contains("Somebody else has changed it", "value=\"Mine\"");
    assertThat(ada.get("/api/v1/rules").body()).contains("\"Gentle\"").doesNotContain("Mine");
  }

  @Test
  void anOrderIsChangedAndWithdrawn() throws Exception {
    assertThat(ada.get(SEQUENCES + "?name=pairs").body()).contains("th 1, th 2");
    assertThat(ada.get(SEQUENCES + "?name=ours").statusCode()).isEqualTo(404);
    assertThat(ada.get(SEQUENCES + "?name=nowhere").statusCode()).isEqualTo(404);
    HttpResponse<String> saved =
        ada.form(
            SEQUENCES, SEQUENCES, "name", "autumn", "title", "Autumn", "seen", "", "steps", "sh");
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(ada.get("/sequences?sequence=autumn").body()).contains("<h2>Autumn</h2>");
    String page = ada.get("/centre/sequences").body();
    String mark =
        page.replaceAll(
            "(?s).*name=\"name\" value=\"autumn\">\\s*<input type=\"hidden\" name=\"seen\" value=\"([0-9a-f]+)\".*",
            "$1");
    HttpResponse<String> gone =
        ada.form("/centre/sequences", "/centre/sequences/withdraw", "name", "autumn", "seen", mark);
    assertThat(gone.statusCode()).isEqualTo(303);
    assertThat(ada.get("/api/v1/sequences").body()).doesNotContain("\"name\":\"autumn\"");
    assertThat(ada.get("/api/v1/sequences?edition=2").body()).contains("\"name\":\"autumn\"");
    assertThat(ada.get(SEQUENCES + "?name=autumn&edition=2").body())
        .contains("This is how it was in edition 2", "sh 1</textarea>", "A new order of teaching");
  }

  private HttpResponse<String> saveSightWords(String name, String words, String seen)
      throws Exception {
    return ada.form(
        SIGHT_WORDS,
        SIGHT_WORDS,
        "name",
        name,
        "title",
        "Ours & <b>mine</b>",
        "words",
        words,
        "seen",
        seen);
  }

  private static String mark(String page, String name) {
    return page.replaceAll(
        "(?s).*name=\"name\" value=\"%s\">\\s*<input type=\"hidden\" name=\"seen\" value=\"([0-9a-f]+)\".*"
            .formatted(name),
        "$1");
  }

  @Test
  void sightWordsAreTypedChangedAndWithdrawn() throws Exception {
    assertThat(saveSightWords("ours", "The, said\nI don’t", "").headers().firstValue("Location"))
        .contains("/centre/sight-words?edition=2&name=ours");
    assertThat(ada.get("/api/v1/sight-words").body())
        .contains("\"name\":\"ours\"", "[\"the\",\"said\",\"i\",\"don't\"]");
    assertThat(ada.get("/api/v1/sight-words?edition=1").body()).doesNotContain("ours");
    assertThat(ada.get("/sight-words").body()).contains("Ours &amp; &lt;b&gt;mine&lt;/b&gt;");
    assertThat(saveSightWords("ours", "was", "").statusCode()).isEqualTo(412);
    String mark = mark(ada.get("/centre/sight-words").body(), "ours");
    assertThat(saveSightWords("ours", "was", mark).statusCode()).isEqualTo(303);
    mark = mark(ada.get("/centre/sight-words").body(), "ours");
    HttpResponse<String> gone =
        ada.form(
            "/centre/sight-words", "/centre/sight-words/withdraw", "name", "ours", "seen", mark);
    assertThat(gone.statusCode()).isEqualTo(303);
    assertThat(ada.get("/api/v1/sight-words").body()).doesNotContain("\"ours\"");
    assertThat(ada.get("/api/v1/sight-words?edition=3").body()).contains("[\"was\"]");
  }

  private String listAfter(HttpResponse<String> done) throws Exception {
    assertThat(done.statusCode()).isEqualTo(303);
    return ada.get(done.headers().firstValue("Location").orElseThrow()).body();
  }

  private static String seen(String form) {
    return form.replaceAll("(?s).*name=\"seen\" value=\"([0-9a-f]*)\".*", "$1");
  }

  @Test
  void aChangeIsPutBackByTheFormFilledInAsItWas() throws Exception {
    assertThat(listAfter(saveSightWords("ours", "the said", ""))).doesNotContain("Restore it");
    String mark = mark(ada.get("/centre/sight-words").body(), "ours");
    String before = "/centre/sight-words/edit?name=ours&edition=2";
    assertThat(listAfter(saveSightWords("ours", "was", mark)))
        .contains("href=\"%s\">Restore it".formatted(before.replace("&", "&amp;")));

    String form = ada.get(before).body();
    assertThat(form).contains("This is how it was in edition 2", "the said</textarea>");
    assertThat(ada.get(SIGHT_WORDS + "?name=ours").body())
        .contains("was</textarea>", "A number from 1 to 3", "max=\"3\"")
        .doesNotContain("This is how it was");
    saveSightWords("ours", "the said", seen(form));
    assertThat(ada.get("/api/v1/sight-words").body()).contains("[\"the\",\"said\"]");
    assertThat(ada.get("/api/v1/sight-words?edition=3").body()).contains("[\"was\"]");
  }

  @Test
  void whatWasWithdrawnComesBackByTheFormFilledInAsItWas() throws Exception {
    saveRules("gentle", "Gentle", "", "switch", "x");
    String mark = mark(ada.get("/centre/rules").body(), "gentle");
    String list =
        listAfter(
            ada.form("/centre/rules", "/centre/rules/withdraw", "name", "gentle", "seen", mark));
    assertThat(list).contains("/centre/rules/edit?name=gentle&amp;edition=2");

    String form = ada.get(RULES + "?name=gentle&edition=2").body();
    assertThat(form)
        .contains("value=\"Gentle\"", "name=\"switch\" value=\"x\" checked")
        .doesNotContain("name=\"switch\" value=\"ck\" checked");
    assertThat(saveRules("gentle", "Gentle", seen(form), "switch", "x").statusCode())
        .isEqualTo(303);
    assertThat(ada.get("/api/v1/rules").body()).contains("\"name\":\"gentle\"");
  }

  @Test
  void whatAnEditionNeverHadIsNotFilledIn() throws Exception {
    saveSightWords("ours", "the said", "");
    HttpResponse<String> never = ada.get(SIGHT_WORDS + "?name=ours&edition=1");
    assertThat(never.statusCode()).isEqualTo(404);
    assertThat(never.body()).contains("Edition 1 has nothing called “ours”");
    assertThat(ada.get(SEQUENCES + "?name=ours&edition=1").statusCode()).isEqualTo(404);
    assertThat(ada.get(RULES + "?name=zz&edition=1").statusCode()).isEqualTo(404);
    assertThat(ada.get(SIGHT_WORDS + "?name=ours&edition=99").body())
        .contains("There is no edition 99");
    assertThat(ada.get(SIGHT_WORDS + "?name=ours&edition=x").statusCode()).isEqualTo(400);
    assertThat(ada.get("/centre/rules?edition=99&name=x").statusCode()).isEqualTo(200);
    assertThat(ada.get("/centre/rules?edition=0&name=%3Cb%3E").body()).doesNotContain("<b>");
  }

  @Test
  void sightWordsThatAreNoneStayInTheForm() throws Exception {
    HttpResponse<String> refused = saveSightWords("ours", "the x-ray <b>", "");
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(refused.body())
        .contains("“x-ray” is no word of up to 40 letters", "the x-ray &lt;b&gt;</textarea>")
        .doesNotContain("<b>mine");
    assertThat(ada.get(SIGHT_WORDS + "?name=nowhere").statusCode()).isEqualTo(404);
    assertThat(ada.get(SIGHT_WORDS).body()).contains("A new set of sight words");
  }

  /** The oo of look is that of wool, the second value; the and said hold what nobody teaches. */
  @Test
  void theFormSaysWhichSightWordsHoldPhonograms() throws Exception {
    String form = ada.get(SIGHT_WORDS + "?name=dolch").body();
    assertThat(form).contains("<bdi>look</bdi>: oo 2", "of them hold phonograms");
    assertThat(form).doesNotContain("<bdi>big</bdi>", "<bdi>it</bdi>");
    assertThat(ada.get("/centre/sight-words").body())
        .contains("Used by default")
        .doesNotContain("Withdraw Dolch");
  }
}
