package org.hedgerow.web.sentences;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.lexicon.Changes;
import org.hedgerow.lexicon.MemoryEditions;
import org.hedgerow.lexicon.Sentence;
import org.hedgerow.lexicon.Sentences;
import org.hedgerow.seed.SeededComposer;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.web.testing.PagesServer;
import org.hedgerow.web.testing.SmallPace;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences on pages: found, checked, made. The sentences of the bank are made up here. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SentencePagesTest {

  private final MemoryEditions editions = new MemoryEditions();
  private PagesServer server;

  @BeforeAll
  void start() {
    editions.publish("Two sentences.", with(sentence("oa", 1, "The goat and the toad float.")));
    server = PagesServer.start(editions);
  }

  private static Sentence sentence(String phonogram, int value, String text) {
    return new Sentence(
        text,
        SeededLexicon.get().catalogue().value(phonogram, value).orElseThrow(),
        List.of("en-US"));
  }

  private static Changes with(Sentence sentence) {
    return new Changes(
        List.of(),
        Set.of(),
        Optional.empty(),
        List.of(),
        Optional.of(new Sentences(List.of(sentence))));
  }

  @AfterAll
  void stop() {
    server.close();
  }

  private String page(String address) throws Exception {
    HttpResponse<String> response = server.get(address);
    assertThat(response.statusCode()).isEqualTo(200);
    return response.body();
  }

  @Test
  void whoeverOrdersTooMuchIsAskedKindlyToTryAgain() throws Exception {
    SentenceOrders orders = new SentenceOrders(SeededComposer.get(), SmallPace.of(1));
    try (PagesServer small = PagesServer.start(editions, orders)) {
      small.get("/sentences/make?for=ai+1&seed=1");
      HttpResponse<String> refused = small.get("/sentences/make?for=ai+1&seed=2");
      assertThat(refused.statusCode()).isEqualTo(429);
      assertThat(words(refused.body())).contains("too many tests", "Try again in");
      assertThat(refused.body())
          .contains("<a href=\"/sentences/make?for=ai+1&amp;seed=2\">Try again</a>");
      assertThat(small.get("/sentences/make").statusCode()).as("nothing is ordered").isEqualTo(200);
    }
  }

  /** What a page says, without its marks. */
  private static String words(String html) {
    return html.replaceAll("<[^>]*>", "");
  }

  @Test
  void sentencesOfTheBankAreFoundByValueWordAndLength() throws Exception {
    String text = "The goat and the toad float.";
    assertThat(words(page("/sentences?for=oa+1"))).contains("1 sentence").contains(text);
    assertThat(words(page("/sentences?for=oa+1&word=toad"))).contains(text);
    assertThat(words(page("/sentences?for=oa+1&word=boat"))).doesNotContain(text);
    assertThat(words(page("/sentences?for=ee+1"))).doesNotContain(text).contains("Make some");
    assertThat(words(page("/sentences?for=oa+1&longest=5"))).doesNotContain(text);
    assertThat(words(page("/sentences?for=oa+1&accent=en-GB"))).doesNotContain(text);
  }

  @Test
  void whatWasAskedGoesAlongToTheOtherPages() throws Exception {
    String html = page("/sentences?for=oa+1&accent=en-GB&taught=sh&edition=1");
    assertThat(html)
        .contains("href=\"/sentences/make?for=oa+1&amp;taught=sh&amp;accent=en-GB\"")
        .contains(
            "href=\"/sentences?for=oa+1&amp;taught=sh&amp;accent=en-GB\">see it as it is now");
  }

  @Test
  void aListOfWordsLeadsToItsSentences() throws Exception {
    assertThat(page("/?phonogram=oa&value=1&accent=en-GB"))
        .contains("href=\"/sentences?for=oa+1&amp;accent=en-GB\"");
  }

  @Test
  void twoAccentsThatSayTheSameSayItOnce() throws Exception {
    String html =
        page("/sentences/check?for=oa+1&accent=en-US&accent=en-GB&text=The+goat+is+by+a+tree.");
    assertThat(html.split("ee says", -1)).hasSize(2);
  }

  @Test
  void anOldEditionAnswersAsItDid() throws Exception {
    assertThat(words(page("/sentences?for=oa+1&edition=1"))).doesNotContain("toad float");
  }

  @Test
  void thePhonogramIsApartFromTheOtherLetters() throws Exception {
    assertThat(page("/sentences?for=oa+1")).contains("g<b class=\"p\">oa</b>t");
  }

  @Test
  void eachWordIsMarkedInWordsToo() throws Exception {
    String html = page("/sentences/check?for=oa+1&text=The+goat+and+the+sheep+ran+to+a+tree.");
    assertThat(words(html))
        .contains("Not yet. The phonogram appears once.")
        .contains("goatphonogram")
        .contains("andreadable")
        .contains("sheepnot yet");
  }

  @Test
  void aReplacementIsOneClickAwayAndMendsTheArticle() throws Exception {
    String html = page("/sentences/check?for=oa+1&text=The+goat+ran+to+a+tree.");
    assertThat(html).contains("text=The+goat+ran+to+an+oak.");
  }

  @Test
  void whatIsTypedIsNeverMarkup() throws Exception {
    String html = page("/sentences/check?for=oa+1&text=%3Cscript%3Ealert(1)%3C/script%3E");
    assertThat(html).doesNotContain("<script>alert").contains("alert");
  }

  @Test
  void sentencesAreMadeAndKept() throws Exception {
    String html = page("/sentences/make?for=oa+1&seed=3&keep=My+goat+has+a+coat.");
    assertThat(words(html)).contains("Kept").contains("My goat has a coat.").contains("New");
    assertThat(html.split("name=\"keep\"", -1)).hasSize(12);
    assertThat(html).contains("name=\"seed\" value=\"4\"");
  }

  @Test
  void whereNothingCanBeMadeItSaysWhy() throws Exception {
    String html = words(page("/sentences/make?for=oa+1&longest=3"));
    assertThat(html).containsAnyOf("No sentence could be made", "There are no more sentences");
    assertThat(html).contains("Allow longer sentences");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/sentences?for=zz+1",
        "/sentences?longest=0",
        "/sentences/check?for=oa+1&accent=xx",
        "/sentences/make?for=oa+1&words=a+b+c+d",
        "/sentences/make?for=oa+1&words=%D8%AA",
        "/sentences/make?for=oa+1&sight-words=mine",
        "/sentences/make?for=oa+1&seed=-1"
      })
  void badAddressesAreToldWhatToDo(String address) throws Exception {
    HttpResponse<String> response = server.get(address);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(response.body()).contains("<!doctype html>").doesNotContain("Exception");
  }
}
