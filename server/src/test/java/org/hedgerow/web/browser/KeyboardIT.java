package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** From the start to a checked word with the keyboard alone. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KeyboardIT {

  private PagesServer server;
  private Browser browser;

  @BeforeAll
  void start() {
    server = PagesServer.start();
    browser = Browser.open(server.origin(), Screen.DESKTOP);
  }

  @AfterAll
  void stop() {
    browser.close();
    server.close();
  }

  @Test
  void skipsToTheContent() {
    browser.go("/?phonogram=oa&value=1");

    browser.press(Keys.TAB);
    assertThat(browser.focused().getText()).isEqualTo("Skip to the content");
    assertThat(browser.focused().getLocation().getY()).isNotNegative();
    browser.press(Keys.ENTER);
    browser.press(Keys.TAB);

    assertThat(browser.focused().getText()).isEqualTo("All phonograms");
  }

  @Test
  void picksNarrowsAndChecks() {
    browser.go("/");
    browser.tabTo("#find-field");
    browser.press("oa");
    browser.await(page -> page.address().equals("/?find=oa"));
    browser.tabTo("a.value");
    requireVisibleFocus(browser.focused());
    browser.press(Keys.ENTER);
    browser.awaitAddress("/?phonogram=oa&value=1");

    browser.tabTo("#narrow-position");
    requireVisibleFocus(browser.focused());
    browser.press("at the s");
    browser.awaitAddress("/?phonogram=oa&value=1&position=start");
    browser.await(page -> page.has(".chips"));
    browser.awaitFocus("#narrow-position");

    browser.tabTo(".tag");
    requireVisibleFocus(browser.focused());
    String word = browser.focused().getText();
    browser.press(Keys.ENTER);
    browser.awaitAddress("/?phonogram=oa&value=1&position=start&word=" + word);
    browser.awaitFocus("#looked-title");
    assertThat(browser.focused().getText()).startsWith("Yes, " + word);

    browser.tabTo(".close");
    browser.press(Keys.ENTER);
    browser.awaitAddress("/?phonogram=oa&value=1&position=start");
    browser.awaitFocus("#word-" + word);
  }

  @Test
  void typesAWord() {
    browser.go("/?phonogram=oa&value=1");
    browser.tabTo("#try-field");
    browser.press("goat", Keys.ENTER);
    browser.awaitAddress("/?phonogram=oa&value=1&word=goat");

    browser.awaitFocus("#looked-title");
    assertThat(browser.focused().getText()).isEqualTo("Yes, goat fits oa as in boat.");
  }

  private static void requireVisibleFocus(WebElement element) {
    assertThat(element.getCssValue("outline-style")).isEqualTo("solid");
    assertThat(element.getCssValue("outline-width")).isEqualTo("3px");
  }
}
