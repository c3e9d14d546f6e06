package org.hedgerow.web.browser;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.support.ui.Select;

/** A word and its picture, from a contributor by way of a reviewer into the list. */
class ReviewJourneyIT {
  @TempDir private Path folder;

  /** All of it as new people do it, from the link that the first start prints. */
  @ParameterizedTest
  @EnumSource
  void fromTheFirstLinkIntoTheList(Screen screen) throws Exception {
    try (PeopleServer server = PeopleServer.start();
        Browser ada = Browser.open(server.origin(), screen);
        Browser nour = Browser.open(server.origin(), screen);
        Browser rosa = Browser.open(server.origin(), screen)) {
      String link = server.accounts().firstAdministrator().link().orElseThrow().text();
      accept(ada, "/welcome/" + link, "ada", "Ada Byron");
      accept(nour, invitation(ada, server, "contributor"), "nour", "نور الهدى");
      accept(rosa, invitation(ada, server, "reviewer"), "rosa", "Rosa Quince");

      contributeAWord(nour);
      returnIt(rosa);
      changeItAndSendItAgain(nour);
      approveIt(rosa);
      isInTheNewEditionAlone(nour, server);

      contributeAPicture(nour);
      rosa.go("/review");
      rosa.one(".queue-link").click();
      rosa.await(page -> page.has(".preview img"));
      PageChecks.check(rosa, "picture to decide on");
      rosa.press("a");
      rosa.await(page -> page.has(".undo"));
      hasItsPictureFromThenOn(nour, server);
    }
  }

  private static void accept(Browser browser, String link, String name, String displayName) {
    browser.go(link);
    PageChecks.check(browser, "welcome");
    browser.one("#name").sendKeys(name);
    browser.one("#displayName").sendKeys(displayName);
    browser.one("#password").sendKeys(PeopleServer.PASSWORD);
    browser.one("main button").click();
    browser.awaitAddress("/account?done=welcome");
  }

  /** The path of the link that the administrator copies. */
  private static String invitation(Browser ada, PeopleServer server, String role) {
    ada.go("/people");
    new Select(ada.one("#role")).selectByValue(role);
    ada.one(".box button").click();
    ada.await(page -> page.has("#shown"));
    return requireNonNull(ada.one("#shown").getDomProperty("value"))
        .substring(server.origin().length());
  }

  /** The word came with edition 2: with the newest, with 2, not with 1; on pages and over HTTP. */
  private static void isInTheNewEditionAlone(Browser nour, PeopleServer server) throws Exception {
    String list = "/?phonogram=oa&value=1&letters=5";
    for (String there : List.of(list, list + "&edition=2")) {
      nour.go(there);
      assertThat(nour.texts(".tag")).as(there).contains("broam");
    }
    nour.go(list + "&edition=1");
    assertThat(nour.texts(".tag")).contains("groan").doesNotContain("broam");
    nour.go("/words/broam");
    assertThat(nour.text("main")).contains("Approved by experienced teachers");
    PageChecks.check(nour, "word");
    nour.go("/words/broam?edition=1");
    assertThat(nour.text("main")).doesNotContain("Approved by experienced teachers");

    String words = "/api/v1/words?phonogram=oa&value=1&accent=en-GB&status=approved";
    assertThat(answer(server, words)).contains("\"edition\":2", "\"broam\"");
    assertThat(answer(server, words + "&edition=2")).contains("\"edition\":2", "\"broam\"");
    assertThat(answer(server, words + "&edition=1"))
        .contains("\"edition\":1", "\"total\":0")
        .doesNotContain("\"broam\"");
    assertThat(server.client().get("/api/v1/words/broam?edition=2").statusCode()).isEqualTo(200);
    assertThat(server.client().get("/api/v1/words/broam?edition=1").statusCode()).isEqualTo(404);
  }

  private static void hasItsPictureFromThenOn(Browser nour, PeopleServer server) throws Exception {
    nour.go("/words/broam");
    assertThat(nour.text("main")).contains("It has a picture.");
    nour.go("/words/broam?edition=2");
    assertThat(nour.text("main")).doesNotContain("It has a picture.");
    assertThat(answer(server, "/api/v1/words/broam?edition=3")).contains("A broam by a pond");
    assertThat(answer(server, "/api/v1/words/broam?edition=2")).doesNotContain("A broam by a pond");
  }

  /** What a visitor's program gets. */
  private static String answer(PeopleServer server, String address) throws Exception {
    var response = server.client().get(address, "Accept", "application/json");
    assertThat(response.statusCode()).as(address).isEqualTo(200);
    return response.body();
  }

  private static void contributeAWord(Browser nour) {
    nour.go("/contributions");
    assertThat(nour.text(".empty")).contains("haven’t contributed anything yet");
    PageChecks.check(nour, "nothing yet");
    nour.one(".button.strong").click();
    nour.await(page -> page.has(".offers"));
    PageChecks.check(nour, "what to contribute");
    nour.go("/contributions/new?kind=word");
    nour.one("#spelling").sendKeys("broam");
    nour.await(page -> page.has("#pieces-0 .piece"));
    assertThat(nour.texts("#pieces-0 .piece-letters")).containsExactly("b", "r", "oa", "m");
    nour.awaitAddress("/contributions/1");
    new Select(nour.one("#wantedFor")).selectByValue("oa 1");
    nour.await(page -> page.text(".verdict.is-pass").equals("It passes for oa as in boat"));
    nour.one("button[data-added]").click();
    nour.await(page -> page.has("#pieces-1 .piece"));
    nour.one("#note").sendKeys("يُقال كذا عندنا");
    PageChecks.check(nour, "form");
    nour.one("button[value=submit]").click();
    nour.awaitAddress("/contributions/1?done=submitted");
    assertThat(nour.texts(".said-line strong"))
        .containsExactly("General American", "southern British English");
    PageChecks.check(nour, "sent");
  }

  private static void returnIt(Browser rosa) {
    rosa.go("/review");
    assertThat(rosa.texts(".queue-row .subject")).containsExactly("broam");
    assertThat(rosa.text(".queue-for")).isEqualTo("oa as in boat");
    PageChecks.check(rosa, "queue");
    rosa.press("j");
    rosa.awaitFocus(".queue-link");
    rosa.focused().click();
    rosa.awaitAddress("/review/1");
    assertThat(rosa.text(".proposal .comment")).contains("يُقال كذا عندنا");
    PageChecks.check(rosa, "decision");
    rosa.press("r");
    rosa.awaitFocus("#comment");
    rosa.press("d");
    assertThat(rosa.address()).as("a letter of the comment, not a key").isEqualTo("/review/1");
    rosa.press("oes one ride in it?");
    rosa.one("button[value=return]").click();
    rosa.awaitAddress("/review?after=1");
    assertThat(rosa.text(".undo")).contains("broam", "returned", "Undo");
    assertThat(rosa.text(".empty")).contains("Nothing waits");
    PageChecks.check(rosa, "empty queue");
  }

  private static void changeItAndSendItAgain(Browser nour) {
    nour.go("/contributions");
    assertThat(nour.text(".comment")).contains("does one ride in it?", "Rosa Quince");
    PageChecks.check(nour, "returned");
    nour.one(".row-act a").click();
    nour.awaitAddress("/contributions/1");
    new Select(nour.one("#picturable")).selectByValue("2");
    new Select(nour.one("#commonness")).selectByValue("4");
    nour.await(page -> page.text("#saved").startsWith("Saved"));
    nour.one("button[value=submit]").click();
    nour.awaitAddress("/contributions/1?done=submitted");
    assertThat(nour.text(".history")).contains("Rosa Quince", "an earlier revision");
  }

  private static void approveIt(Browser rosa) {
    rosa.go("/review/1");
    assertThat(rosa.texts(".compared tbody th")).contains("Said in General American");
    rosa.press("a");
    rosa.awaitAddress("/review?after=1");
    assertThat(rosa.text(".undo")).contains("broam", "approved");
  }

  private void contributeAPicture(Browser nour) throws IOException {
    nour.go("/words/broam");
    nour.link("Add a picture").click();
    nour.await(page -> page.has("#file"));
    nour.one("#title").sendKeys("A broam by a pond");
    nour.one("#author").sendKeys("نور الهدى");
    new Select(nour.one("#licence")).selectByValue("CC-BY-4.0");
    nour.one("#file").sendKeys(drawing().toString());
    nour.await(page -> page.has(".preview img"));
    PageChecks.check(nour, "picture");
    nour.one("button[value=submit]").click();
    nour.await(page -> page.address().endsWith("?done=submitted"));
  }

  private Path drawing() throws IOException {
    BufferedImage image = new BufferedImage(300, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.ORANGE);
    graphics.fillOval(40, 40, 200, 200);
    graphics.dispose();
    Path file = folder.resolve("broam.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }

  /** What was written in one tab isn't lost when another tab was faster. */
  @Test
  void twoTabs() {
    try (PeopleServer server = PeopleServer.start();
        Browser one = Browser.open(server.origin(), Screen.DESKTOP);
        Browser other = Browser.open(server.origin(), Screen.DESKTOP)) {
      server.person("nour", "Nour", Role.CONTRIBUTOR);
      signIn(one, "nour");
      signIn(other, "nour");
      one.go("/contributions/new?kind=word&word=broam");
      one.one("#note").sendKeys("first");
      one.awaitAddress("/contributions/1");
      other.go("/contributions/1");
      one.one("#note").sendKeys(" and second");
      one.await(page -> page.has("[name=revision][value='2']"));
      other.one("#note").sendKeys(" from elsewhere");
      other.await(page -> page.has(".elsewhere"));
      PageChecks.check(other, "stale");
      assertThat(other.text(".elsewhere .compared"))
          .contains("first and second", "first from elsewhere");
      assertThat(other.one("#note").getDomProperty("value")).isEqualTo("first from elsewhere");
      other.one(".submit-line button[value=save]").click();
      other.awaitAddress("/contributions/1?done=saved");
      assertThat(other.one("#note").getDomProperty("value")).isEqualTo("first from elsewhere");
    }
  }

  /** Letters and sounds are put together by tapping, or letter by letter where nothing runs. */
  @Test
  void lettersAndSounds() {
    try (PeopleServer server = PeopleServer.start();
        Browser browser = Browser.open(server.origin(), Screen.PHONE)) {
      server.person("nour", "Nour", Role.CONTRIBUTOR);
      signIn(browser, "nour");
      browser.go("/contributions/new?kind=word&word=broam");
      browser.one("#letters-fold-0 > summary").click();
      browser.all(".tap-letter").get(2).click();
      browser.all(".tap-sounds .key").get(2).click();
      browser.await(page -> page.text("#beside").contains("Each letter must belong"));
      browser.all(".tap-letter").get(3).click();
      browser.one(".tap-sounds .key:last-child").click();
      browser.await(page -> page.texts(".piece-letters").equals(List.of("b", "r", "o", "a", "m")));
      PageChecks.check(browser, "letters");

      browser.withoutScripts();
      browser.go("/contributions/1");
      browser.one("#letters-fold-0 > summary").click();
      new Select(browser.one("#letter-0-3")).selectByValue("2");
      new Select(browser.one("#letter-0-4")).selectByValue("2");
      browser.one(".submit-line button[value=save]").click();
      browser.awaitAddress("/contributions/1?done=saved");
      assertThat(browser.texts(".piece-letters")).containsExactly("b", "r", "oa", "m");
      browser.one("#sounds-fold-0 > summary").click();
      browser.one("button[name=do][value='say-0-z']").click();
      browser.awaitAddress("/contributions/1");
      assertThat(requireNonNull(browser.one("#sounds-0").getDomProperty("value"))).endsWith("m z");
    }
  }

  /**
   * The title of the accent, its pieces and the choices stand under each other, none over another.
   */
  @ParameterizedTest
  @EnumSource
  void aCorrectionOfLettersAndSounds(Screen screen) {
    try (PeopleServer server = PeopleServer.start();
        Browser browser = Browser.open(server.origin(), screen)) {
      server.person("nour", "Nour", Role.CONTRIBUTOR);
      signIn(browser, "nour");
      browser.go("/contributions/new?kind=alignment&word=bread");
      browser.await(page -> page.has("#pieces-0 .piece"));
      PageChecks.check(browser, "alignment");
      assertThat(browser.bottom(".saying > legend")).isLessThanOrEqualTo(browser.top("#pieces-0"));
      assertThat(browser.left("#pieces-0 .piece"))
          .isCloseTo(browser.left("#pieces-0"), within(1.0));
      assertThat(browser.bottom("#pieces-0")).isLessThanOrEqualTo(browser.top("#letters-fold-0"));
    }
  }

  /** The good ones are sent, the others come back with reasons. */
  @Test
  void manyWordsAtOnce() {
    try (PeopleServer server = PeopleServer.start();
        Browser browser = Browser.open(server.origin(), Screen.PHONE)) {
      server.person("nour", "Nour", Role.CONTRIBUTOR);
      signIn(browser, "nour");
      browser.go("/contributions/table");
      PageChecks.check(browser, "table");
      browser.one("#words").sendKeys("broam\nboat\nfloam");
      new Select(browser.one("#wantedFor")).selectByValue("oa 1");
      browser.one("button[value=judge]").click();
      browser.await(page -> page.has(".judged"));
      PageChecks.check(browser, "judged");
      assertThat(browser.texts(".judged-row .mark"))
          .containsExactly("Can be sent", "Not as it is", "Can be sent");
      browser.one("button[value=submit]").click();
      browser.await(page -> page.has(".done"));
      assertThat(browser.text(".done")).contains("2 words are on the way");
      PageChecks.check(browser, "sent many");
    }
  }

  private static void signIn(Browser browser, String name) {
    browser.go("/sign-in");
    browser.one("#name").sendKeys(name);
    browser.one("#password").sendKeys(PeopleServer.PASSWORD);
    browser.one("main button").click();
    browser.awaitAddress("/");
  }
}
