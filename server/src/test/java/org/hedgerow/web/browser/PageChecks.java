package org.hedgerow.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What holds of every page, whoever looks at it; and a picture of it to look at. */
final class PageChecks {
  private static final String WIDER_THAN_THE_SCREEN =
      "return document.documentElement.scrollWidth > window.innerWidth";

  private PageChecks() {}

  static void check(Browser browser, String name) {
    picture(browser, name);
    assertThat(browser.script(WIDER_THAN_THE_SCREEN)).as(name).isEqualTo(false);
    assertThat(Axe.violations(browser)).as(name).isEmpty();
    assertThat(browser.script(AccessibilityIT.TOO_SMALL)).as(name).isEqualTo(List.of());
  }

  /** In target/pictures, for people. */
  private static void picture(Browser browser, String name) {
    Object width = browser.script("return window.innerWidth");
    byte[] picture = browser.wholePage();
    try {
      Path folder = Files.createDirectories(Path.of("target/pictures"));
      Files.write(folder.resolve("%s-%s.png".formatted(name, width)), picture);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
