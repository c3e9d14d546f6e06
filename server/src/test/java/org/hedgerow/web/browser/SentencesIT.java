package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Sentences in a browser: judged as one types, put right with a click, made and kept. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SentencesIT {

  private PagesServer server;
  private Browser browser;

  @BeforeAll
  void start() {
    server = PagesServer.start();
    browser = Browser.open(server.origin(), Screen.PHONE);
  }

  @AfterAll
  void stop() {
    browser.close();
    server.close();
  }

  @Test
  void aSentenceIsJudgedAsItIsTyped() {
    browser.go("/sentences/check?for=oa+1");

    browser.one("#text").sendKeys("The goat and the toad sat in a tree.");

    browser.await(page -> page.has(".verdict"));
    browser.await(page -> page.text(".verdict").equals("Not yet. The phonogram appears twice."));
    assertThat(browser.texts(".captioned .blocked .caption")).containsExactly("not yet");
    assertThat(browser.texts(".captioned .target b.p")).containsExactly("oa", "oa");
  }

  @Test
  void aBlockedWordIsReplacedWithAClick() {
    browser.go("/sentences/check?for=oa+1&text=The+goat+and+the+toad+sat+in+a+tree.");

    browser.link("oak").click();

    browser.await(page -> page.text(".verdict").startsWith("You can use it."));
    assertThat(browser.one("#text").getAttribute("value"))
        .isEqualTo("The goat and the toad sat in an oak.");
  }

  @Test
  void whatIsKeptStaysWhenOthersAreMade() {
    browser.go("/sentences/make?for=oa+1");
    List<String> made = browser.texts(".strips .strip");
    assertThat(made).hasSize(10);

    browser.one("[name=keep]").click();
    browser.one("#make-form button").click();

    browser.await(page -> page.has("#kept-title"));
    List<String> then = browser.texts(".strips .strip");
    assertThat(then).hasSize(11).startsWith(made.get(0));
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void nothingStandsOutOfASmallScreen() {
    for (String address :
        List.of("/sentences?for=oa+1", "/sentences/check?for=oa+1", "/sentences/make?for=oa+1")) {
      browser.go(address);
      assertThat(
              browser.script(
                  "return document.documentElement.scrollWidth"
                      + " <= document.documentElement.clientWidth"))
          .as(address)
          .isEqualTo(true);
    }
  }
}
