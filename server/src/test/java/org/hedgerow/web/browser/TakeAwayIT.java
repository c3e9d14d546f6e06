package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Copying, downloading and printing a list: always all of it, not only what is shown. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TakeAwayIT {

  private static final String LIST = "/?phonogram=sh&value=1";

  private PagesServer server;
  private Browser browser;

  @BeforeAll
  void start() {
    server = PagesServer.start();
    browser = Browser.open(server.origin(), Screen.DESKTOP);
    browser.allowClipboard();
  }

  @AfterAll
  void stop() {
    browser.close();
    server.close();
  }

  private int total() {
    return Integer.parseInt(browser.text("#list-title").split(" ", 2)[0]);
  }

  @Test
  void copiesTheWholeList() {
    browser.go(LIST);

    browser.one("[data-copy]").click();

    browser.await(page -> !page.text("[data-copied]").isEmpty());
    assertThat(browser.text("[data-copied]")).isEqualTo(total() + " words copied");
    browser.await(page -> page.text("#news").equals(total() + " words copied"));
    assertThat(browser.clipboard().lines()).hasSize(total()).contains("ship", "fish");
  }

  @Test
  void copiesWhereTheBrowserKeepsTheClipboardToItself() {
    browser.go(LIST);
    browser.script("Object.defineProperty(navigator, 'clipboard', {value: undefined})");

    browser.one("[data-copy]").click();

    browser.await(page -> page.text("[data-copied]").equals(total() + " words copied"));
    assertThat(browser.one(".as-text").getAttribute("open")).isNull();
  }

  @Test
  void saysWhenItCantCopy() {
    browser.go(LIST);
    browser.script("Object.defineProperty(navigator, 'clipboard', {value: undefined})");
    browser.script("document.execCommand = () => false");

    browser.one("[data-copy]").click();

    browser.await(page -> page.has("[data-copied=no]"));
    assertThat(browser.text("[data-copied]")).startsWith("Your browser doesn’t let us copy.");
  }

  @Test
  void downloadsText() {
    browser.go(LIST);
    int total = total();

    browser.link("Text").click();

    List<String> lines = browser.download("sh-1-ship.txt").lines().toList();
    assertThat(lines).hasSize(total).contains("ship", "fish");
  }

  @Test
  void downloadsATable() {
    browser.go(LIST);
    int total = total();

    browser.one("a[href^='/words.csv']").click();

    List<String> lines = browser.download("sh-1-ship.csv").lines().toList();
    assertThat(lines).hasSize(total + 1);
    assertThat(lines).anyMatch(line -> line.startsWith("ship,sh,sh i p,ʃ ɪ p,1,"));
    assertThat(lines.get(0)).isEqualTo("\uFEFFword,phonogram,letters,sounds,syllables,commonness");
  }

  @Test
  void printsTheWordsAndNoControls() {
    browser.go(LIST);
    browser.asOnPaper();

    assertThat(browser.one(".tag").isDisplayed()).isTrue();
    assertThat(browser.one("h1").isDisplayed()).isTrue();
    assertThat(List.of(".top", "#look", "#narrow", ".tools", ".pages"))
        .noneMatch(selector -> browser.one(selector).isDisplayed());
    browser.asOnScreen();
  }
}
