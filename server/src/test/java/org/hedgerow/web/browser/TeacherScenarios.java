package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.hedgerow.web.testing.PagesServer;
import org.hedgerow.web.testing.SamplePages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** A teacher picks a phonogram, narrows its list and looks at words, on one kind of screen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class TeacherScenarios {

  private final Screen screen;
  private PagesServer server;
  private Browser browser;

  TeacherScenarios(Screen screen) {
    this.screen = screen;
  }

  @BeforeAll
  void open() {
    server = PagesServer.start();
    browser = Browser.open(server.origin(), screen);
  }

  @BeforeEach
  void start() {
    browser.go("/");
  }

  @AfterEach
  void nothingIsBrokenAndNothingCameFromElsewhere() {
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).isNotEmpty().allMatch(url -> url.startsWith(server.origin()));
  }

  @AfterAll
  void close() {
    browser.close();
    server.close();
  }

  @Test
  void picksAPhonogram() {
    value("oa as in boat").click();

    assertThat(browser.address()).isEqualTo("/?phonogram=oa&value=1");
    assertThat(browser.text("h1")).isEqualTo("oa as in boat");
    assertThat(browser.texts(".tag"))
        .contains("boat", "goat", "soap")
        .doesNotContain("boats", "sheep");
    assertThat(letters(".tag .p")).containsOnly("oa");
  }

  @Test
  void findsAPhonogramWhileTyping() {
    browser.one("#find-field").sendKeys("igh");

    browser.await(page -> letters(".entry .grapheme").equals(List.of("igh", "aigh", "eigh")));
    assertThat(browser.address()).isEqualTo("/?find=igh");
    browser.awaitFocus("#find-field");
    browser.await(page -> page.text("#news").equals("4 found for “igh”."));
  }

  @Test
  void findsThePhonogramsOfAWord() {
    browser.one("#find-field").sendKeys("goat", Keys.ENTER);

    browser.await(page -> letters(".entry .grapheme").equals(List.of("oa")));
  }

  @Test
  void narrowsAList() {
    browser.go("/?phonogram=sh&value=1");
    String all = browser.text("#list-title");
    unfold();

    choose("#narrow-position", "at the end");
    browser.awaitAddress("/?phonogram=sh&value=1&position=end");
    choose("#narrow-letters", "4 letters");
    browser.awaitAddress("/?phonogram=sh&value=1&letters=4&position=end");

    assertThat(browser.texts(".tag"))
        .contains("fish", "wish")
        .allMatch(word -> word.length() == 4 && word.endsWith("sh"));
    assertThat(browser.text("#list-title"))
        .isNotEqualTo(all)
        .startsWith(browser.all(".tag").size() + " words");
    String news = browser.all(".tag").size() + " words for sh as in ship.";
    browser.await(page -> page.text("#news").equals(news));
    assertThat(browser.texts(".chips li a")).hasSize(2).first().asString().startsWith("4 letters");

    browser.one(".chips li a").click();
    browser.awaitAddress("/?phonogram=sh&value=1&position=end");
    browser.awaitFocus("#list-title");
  }

  @Test
  void theChoiceJustMadeStaysWhereItWasOnTheScreen() {
    browser.go("/?phonogram=oa&value=1&limit=500");
    unfold();
    browser.script(
        "arguments[0].scrollIntoView({ block: 'center' })", browser.one("#narrow-letters"));
    double before = browser.top("#narrow-letters");

    choose("#narrow-letters", "6 letters");
    browser.awaitAddress("/?phonogram=oa&value=1&letters=6&limit=500");
    browser.await(page -> page.has(".chips"));

    browser.await(page -> Math.abs(page.top("#narrow-letters") - before) < 2);
  }

  @Test
  void countsInWhatIsTaught() {
    browser.go("/?phonogram=sh&value=1&letters=5");

    browser.one("#narrow-taught").sendKeys("ee, oo2", Keys.ENTER);

    browser.awaitAddress("/?phonogram=sh&value=1&letters=5&taught=ee,oo2");
    assertThat(browser.texts(".tag")).contains("sheep", "shook").doesNotContain("shoot");
  }

  @Test
  void isToldBesideTheFieldWhatIsWrong() {
    browser.go("/?phonogram=sh&value=1");
    unfold();

    browser.one("#narrow-taught").sendKeys("ee, zq", Keys.ENTER);

    browser.await(page -> page.has("#taught-error"));
    assertThat(browser.text("#taught-error")).startsWith("There is no phonogram “zq”.");
    browser.awaitFocus("#narrow-taught");
    assertThat(browser.focused().getDomProperty("value")).isEqualTo("ee, zq");
    assertThat(browser.texts(".tag")).contains("ship");
    browser.complaints(); // of the status 400, which is meant
  }

  @Test
  void looksAtAWordOfTheList() {
    browser.go("/?phonogram=i-e&value=1");

    browser.one("#word-five").click();

    browser.awaitAddress("/?phonogram=i-e&value=1&word=five");
    browser.awaitFocus("#looked-title");
    assertThat(browser.text("#looked-title")).isEqualTo("Yes, five fits i-e as in kite.");
    assertThat(browser.texts(".spans .letters")).containsExactly("f", "i-e", "v");
    assertThat(browser.texts(".spans .sound")).containsExactly("“f” /f/", "“eye” /aɪ/", "“v” /v/");
    assertThat(browser.text(".spans .target .why"))
        .isEqualTo("the phonogram of this list, as in kite");
    assertThat(letters(".big-word .p")).containsExactly("i", "e");
    assertThat(browser.one("#word-five").getAttribute("aria-current")).isEqualTo("true");

    browser.link("Close").click();
    browser.awaitAddress("/?phonogram=i-e&value=1");
    browser.awaitFocus("#word-five");
  }

  @Test
  void learnsThatAWordMayBeUsed() {
    browser.go("/?phonogram=oo&value=2");

    browser.one("#try-field").sendKeys("Wool", Keys.ENTER);

    browser.await(page -> page.has("#looked-title"));
    assertThat(browser.text("#looked-title")).isEqualTo("Yes, wool fits oo as in wool.");
    assertThat(browser.has(".looked.pass .reasons")).isFalse();
  }

  @Test
  void learnsWhyAWordMayNotBeUsed() {
    browser.go("/?phonogram=sh&value=1");

    browser.one("#try-field").sendKeys("sheep");
    browser.one("#try button").click();

    browser.await(page -> page.has("#looked-title"));
    assertThat(browser.text("#looked-title")).isEqualTo("No, sheep doesn’t fit sh as in ship.");
    assertThat(browser.text(".reasons")).contains("ee says /i/ here: a second phonogram");
    assertThat(letters(".reason-word mark")).containsExactly("ee");
    assertThat(browser.one(".reason-word mark").getCssValue("text-decoration-line"))
        .as("marked by more than colour")
        .isEqualTo("underline");
    assertThat(browser.address()).isEqualTo("/?phonogram=sh&value=1&word=sheep");
  }

  @Test
  void isToldWhereElseAWordFits() {
    browser.go("/?phonogram=oo&value=1&word=wool");

    assertThat(browser.text(".reasons")).contains("oo says /ʊ/ here");
    browser.link("oo as in wool").click();

    browser.awaitAddress("/?phonogram=oo&value=2");
  }

  @Test
  void isToldWhatToTeachFirst() {
    browser.go("/?phonogram=sh&value=1&word=sheep");

    browser.link("once ee is taught").click();

    browser.awaitAddress("/?phonogram=sh&value=1&taught=ee&word=sheep");
    browser.await(page -> page.text("#looked-title").startsWith("Yes, sheep fits"));
    browser.awaitFocus("#looked-title");
  }

  @Test
  void pagesOn() {
    browser.go("/?phonogram=sh&value=1");
    List<String> first = browser.texts(".tag");

    browser.link("Next words").click();
    browser.await(page -> page.text("#list-title").contains("51 to"));

    assertThat(browser.texts(".tag")).doesNotContainAnyElementsOf(first);
    assertThat(browser.address()).startsWith("/?phonogram=sh&value=1&after=");
    browser.awaitFocus("#list-title");
    assertThat(isInView(browser.one("#list-title"))).isTrue();
  }

  @Test
  void goesBackStepByStep() {
    value("oa as in boat").click();
    browser.one("#word-soap").click();
    browser.awaitAddress("/?phonogram=oa&value=1&word=soap");

    browser.back();
    browser.awaitAddress("/?phonogram=oa&value=1");
    browser.await(page -> !page.has("#looked-title"));
    browser.back();
    browser.awaitAddress("/");
    browser.await(page -> page.text("h1").equals("Words for every phonogram"));
  }

  @Test
  void theAddressShowsTheSameAgain() {
    browser.go("/?phonogram=a-e&value=1");
    unfold();
    choose("#narrow-syllables", "1 syllable");
    browser.awaitAddress("/?phonogram=a-e&value=1&syllables=1");
    choose("#narrow-sort", "A to Z");
    browser.awaitAddress("/?phonogram=a-e&value=1&syllables=1&sort=spelling");
    browser.one("#word-bake").click();
    browser.await(page -> page.has("#looked-title"));
    String seen = browser.text("main");
    String address = browser.address();

    browser.go("/");
    browser.go(address);

    assertThat(browser.address()).isEqualTo(address);
    assertThat(browser.text("main")).isEqualTo(seen);
  }

  @Test
  void nothingStandsBesideTheScreen() {
    for (String address : SamplePages.ADDRESSES) {
      browser.go(address);
      assertThat(browser.script("return document.documentElement.scrollWidth"))
          .as(address)
          .asInstanceOf(InstanceOfAssertFactories.LONG)
          .isLessThanOrEqualTo(screen.width());
    }
    browser.complaints(); // of the pages that tell an error, on purpose
  }

  private WebElement value(String name) {
    return browser.all("a.value").stream()
        .filter(link -> String.valueOf(link.getAttribute("textContent")).startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private List<String> letters(String selector) {
    return browser.all(selector).stream().map(each -> each.getText()).toList();
  }

  /** On a desk the choices are open already. */
  private void unfold() {
    WebElement summary = browser.one("#narrow > summary");
    if (summary.isDisplayed()) {
      summary.click();
    }
  }

  private void choose(String field, String text) {
    new Select(browser.one(field)).selectByVisibleText(text);
  }

  private boolean isInView(WebElement element) {
    String script =
        "const place = arguments[0].getBoundingClientRect();"
            + " return place.top >= 0 && place.bottom <= window.innerHeight";
    return Boolean.TRUE.equals(browser.script(script, element));
  }
}
