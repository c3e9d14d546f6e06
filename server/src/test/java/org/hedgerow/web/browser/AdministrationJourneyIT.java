package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.testing.PeopleServer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.support.ui.Select;

/** An administrator names the centre and looks at what was done, by keyboard. */
class AdministrationJourneyIT {

  @ParameterizedTest
  @EnumSource
  void namesTheCentreAndLooksAtWhatWasDone(Screen screen) {
    try (PeopleServer server = PeopleServer.start();
        Browser ada = Browser.open(server.origin(), screen)) {
      server.person("ada", Role.ADMINISTRATOR);
      Actor rosa = server.person("rosa", Role.REVIEWER);
      server.accounts().people().rename(rosa, rosa.requireAccount().id(), "روزا الحسن");
      server
          .accounts()
          .people()
          .changeRole(Actor.OPERATOR, rosa.requireAccount().id(), Role.CONTRIBUTOR);
      signIn(ada, "/people");
      ada.link("The centre").click();
      PageChecks.check(ada, "centre");

      ada.tabTo("#name");
      ada.press("Hawthorn Training Centre – مركز الزعرور");
      ada.tabTo("#approvals");
      ada.press("two");
      ada.tabTo("main button");
      ada.press(Keys.ENTER);
      ada.awaitAddress("/centre?done=changed");
      assertThat(ada.text(".centre")).startsWith("Hawthorn Training Centre");
      PageChecks.check(ada, "centre-changed");

      ada.link("Activity log").click();
      ada.awaitAddress("/audit");
      assertThat(ada.texts(".records h3")).startsWith("Centre changed", "Session started");
      assertThat(ada.text(".records li table")).contains("approvals", "1", "2", "Hawthorn");
      PageChecks.check(ada, "audit");

      new Select(ada.one("#action")).selectByVisibleText("account role");
      ada.tabTo("main form button");
      ada.press(Keys.ENTER);
      ada.await(page -> page.address().contains("action=account.role"));
      assertThat(ada.texts(".records h3")).containsExactly("Account role");
      assertThat(ada.text(".fields")).contains("reviewer", "contributor");
      PageChecks.check(ada, "audit-narrowed");
      ada.link("account " + rosa.requireAccount().id()).click();
      ada.await(page -> page.text("h1").equals("روزا الحسن"));

      ada.go("/audit?actor=nobody");
      assertThat(ada.text(".empty")).contains("No activity matches");
      PageChecks.check(ada, "audit-empty");
      ada.go("/audit?from=yesterday");
      PageChecks.check(ada, "audit-wrong");
    }
  }

  private static void signIn(Browser browser, String then) {
    browser.go(then);
    browser.one("#name").sendKeys("ada");
    browser.one("#password").sendKeys(PeopleServer.PASSWORD, Keys.ENTER);
    browser.awaitAddress(then);
  }
}
