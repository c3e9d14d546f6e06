package org.hedgerow.web.browser;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hedgerow.apidocs.ApiDocs;
import org.hedgerow.web.testing.PagesServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.openqa.selenium.By;

/**
 * The interface as a person reads it: every operation of the document, on a desk and on a phone.
 */
class DocsIT {
  private PagesServer server;

  @BeforeEach
  void start() {
    server = PagesServer.start();
  }

  @AfterEach
  void stop() {
    server.close();
  }

  @ParameterizedTest
  @EnumSource(Screen.class)
  void showsEveryOperationUnderItsTag(Screen screen) {
    try (Browser browser = Browser.open(server.origin(), screen)) {
      browser.go("/docs");
      browser.await(page -> page.all(".opblock").size() >= operations());

      assertThat(browser.all(".opblock")).hasSize((int) operations());
      assertThat(browser.texts(".opblock-tag span")).containsAll(tags());
      assertThat(browser.all(".opblock-tag-section"))
          .allMatch(tag -> !tag.findElements(By.className("opblock")).isEmpty());
      assertThat(browser.has(".errors-wrapper")).isFalse();
      assertThat(browser.complaints()).isEmpty();
    }
  }

  private static long operations() {
    return document().filter(line -> line.matches(" {6}operationId: .*")).count();
  }

  private static List<String> tags() {
    return document()
        .filter(line -> line.matches(" {2}- name: .*"))
        .map(line -> line.substring("  - name: ".length()))
        .toList();
  }

  private static Stream<String> document() {
    return new String(ApiDocs.openApi(), UTF_8).lines();
  }
}
