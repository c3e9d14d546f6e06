package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hedgerow.web.testing.PagesServer;
import org.hedgerow.web.testing.SamplePages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Pages for people who see little, hear them, or move about with difficulty: axe-core finds
 * nothing, and what can be pressed is large enough.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccessibilityIT {

  private PagesServer server;

  @BeforeAll
  void start() {
    server = PagesServer.start();
  }

  @AfterAll
  void stop() {
    server.close();
  }

  /**
   * WCAG 2.2, 2.5.5, for what is pressed by thumbs: 44 by 44 CSS pixels, links in sentences aside.
   */
  @ParameterizedTest
  @EnumSource
  void axeFindsNothingAndThumbsFindEverything(Screen screen) {
    try (Browser browser = Browser.open(server.origin(), screen)) {
      for (String address : SamplePages.ADDRESSES) {
        browser.go(address);
        if (screen == Screen.PHONE) {
          assertThat(browser.script(TOO_SMALL)).as(address).isEqualTo(List.of());
        }
        assertThat(Axe.violations(browser)).as(address).isEmpty();
      }
    }
  }

  /** Or a page without findings would say nothing. */
  @Test
  void axeFindsWhatIsWrong() {
    try (Browser browser = Browser.open(server.origin(), Screen.DESKTOP)) {
      browser.go("/nowhere");
      browser.script(
          """
          document.querySelector('main').innerHTML +=
            '<ul>' + '<li>pale</li>'.repeat(9) + '</ul><img src="/favicon.ico">';
          document.querySelectorAll('main li').forEach(each => each.style.color = '#999');
          """);
      assertThat(Axe.violations(browser))
          .anyMatch(found -> found.startsWith("color-contrast"))
          .anyMatch(found -> found.startsWith("image-alt"));
    }
  }

  static final String TOO_SMALL =
      """
      return [...document.querySelectorAll('a, button, input, select, summary, textarea')]
        .filter(each => each.checkVisibility() && each.type !== 'hidden')
        .filter(each => !each.matches('.skip'))
        .filter(each => getComputedStyle(each).display !== 'inline')
        .filter(each => {
          const place = each.getBoundingClientRect();
          return place.height < 44 || place.width < 44;
        })
        .map(each => each.outerHTML.slice(0, 120));
      """;

  /** Nothing moves for people who have asked for that. */
  @Test
  void nothingMovesWhereThatIsNotWanted() {
    try (Browser browser = Browser.open(server.origin(), Screen.DESKTOP)) {
      browser.prefersReducedMotion();
      browser.go("/?phonogram=oa&value=1");
      assertThat(browser.one(".tag").getCssValue("transition-duration")).isEqualTo("0s");
    }
  }
}
