package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.support.ui.Select;

/** From the first start to the first reviewer, in two browsers. */
class PeopleJourneyIT {
  @ParameterizedTest
  @EnumSource
  void fromTheFirstLinkToAReviewer(Screen screen) {
    try (PeopleServer server = PeopleServer.start();
        Browser ada = Browser.open(server.origin(), screen);
        Browser rosa = Browser.open(server.origin(), screen)) {
      String link = server.accounts().firstAdministrator().link().orElseThrow().text();
      makeAccount(ada, "/welcome/" + link, "ada", "Ada Byron");
      assertThat(ada.text(".lead")).contains("ada", "administrator");

      ada.one(".who button").click();
      ada.awaitAddress("/");
      assertThat(ada.text(".who")).isEqualTo("Sign in");

      ada.go("/people");
      ada.awaitAddress("/sign-in?then=%2Fpeople");
      PageChecks.check(ada, "sign-in");
      ada.one("#name").sendKeys("ada");
      ada.one("#password").sendKeys("not this one");
      ada.one("main button").click();
      ada.await(page -> page.has("[role=alert]"));
      ada.one("#password").sendKeys(PeopleServer.PASSWORD);
      ada.one("main button").click();
      ada.awaitAddress("/people");

      new Select(ada.one("#role")).selectByValue("reviewer");
      ada.one(".box button").click();
      ada.await(page -> page.has("#shown"));
      PageChecks.check(ada, "people");
      String invitation =
          String.valueOf(ada.one("#shown").getDomProperty("value"))
              .substring(server.origin().length());

      makeAccount(rosa, invitation, "rosa", "روزا");
      assertThat(rosa.text(".lead")).contains("rosa", "reviewer");
      assertThat(rosa.has(".who a[href='/people']")).isFalse();
      rosa.one("#label").sendKeys("a script");
      rosa.one("form[action='/account/tokens'] button").click();
      rosa.await(page -> page.has("#shown"));
      PageChecks.check(rosa, "account");
      rosa.go("/people");
      assertThat(rosa.text("h1")).isEqualTo("Your role doesn't allow this");

      ada.go("/people");
      ada.link("روزا").click();
      ada.await(page -> page.text("h1").equals("روزا"));
      PageChecks.check(ada, "person");
      rosa.go(invitation);
      assertThat(rosa.text(".lead")).contains("used already");
    }
  }

  private static void makeAccount(Browser browser, String link, String name, String displayName) {
    browser.go(link);
    PageChecks.check(browser, "welcome");
    browser.one("#name").sendKeys(name);
    browser.one("#displayName").sendKeys(displayName);
    browser.one("#password").sendKeys("short");
    browser.one("main button").click();
    browser.await(page -> page.has("#password-error"));
    browser.one("#password").sendKeys(PeopleServer.PASSWORD);
    browser.one("main button").click();
    browser.awaitAddress("/account?done=welcome");
  }
}
