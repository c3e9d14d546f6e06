package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.support.ui.Select;

/** Everything by ordinary links and forms, in a browser that runs no scripts. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NoScriptIT {

  private PagesServer server;
  private Browser browser;

  @BeforeAll
  void start() {
    server = PagesServer.start();
    browser = Browser.open(server.origin(), Screen.PHONE);
    browser.withoutScripts();
  }

  @AfterAll
  void stop() {
    browser.close();
    server.close();
  }

  @Test
  void findsAndPicks() {
    browser.go("/");
    browser.one("#find-field").sendKeys("oa");
    browser.one("#find button").click();
    browser.awaitAddress("/?find=oa");

    browser.one("a.value").click();

    browser.awaitAddress("/?phonogram=oa&value=1");
    assertThat(browser.texts(".tag")).contains("boat");
  }

  @Test
  void narrowsToACleanAddress() {
    browser.go("/?phonogram=oa&value=1");
    browser.one("#narrow > summary").click();
    new Select(browser.one("#narrow-letters")).selectByVisibleText("4 letters");

    browser.one("#narrow-form button").click();

    browser.awaitAddress("/?phonogram=oa&value=1&letters=4");
    assertThat(browser.texts(".tag")).contains("boat").allMatch(word -> word.length() == 4);
  }

  @Test
  void looksAtAWordAndChecksAnother() {
    browser.go("/?phonogram=oa&value=1");
    browser.one("#word-boat").click();
    browser.await(page -> page.text("#looked-title").equals("Yes, boat fits oa as in boat."));

    browser.one("#try-field").clear();
    browser.one("#try-field").sendKeys("goats");
    browser.one("#try button").click();

    browser.await(
        page -> page.text("#looked-title").equals("No, goats doesn’t fit oa as in boat."));
    assertThat(browser.address()).isEqualTo("/?phonogram=oa&value=1&word=goats");
  }

  @Test
  void theListCanBeCopiedByHand() {
    browser.go("/?phonogram=oa&value=1");

    assertThat(browser.one("[data-copy]").isDisplayed()).as("a button that does nothing").isFalse();
    browser.one(".as-text summary").click();
    assertThat(browser.text("#plain-list").lines()).contains("boat", "goat");
  }
}
