package org.hedgerow.web.pages;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;
import java.util.stream.Stream;

/** What axe-core finds wrong with a page. */
final class Axe {
  /** Everything that it knows, its advice included. */
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice", "wcag2aaa");

  private Axe() {}

  /**
   * As in {@code color-contrast at .tag}. Our pages hold no frames of other origins, so axe-core
   * needs no window of its own to put its findings together.
   */
  static List<String> violations(Browser browser) {
    AxeRunOptions onlyViolations = new AxeRunOptions();
    onlyViolations.setResultTypes(List.of("violations"));
    return new AxeBuilder()
            .withOptions(onlyViolations)
            .withTags(RULES)
            .setLegacyMode()
            .analyze(browser.driver())
            .getViolations()
            .stream()
            .flatMap(Axe::places)
            .toList();
  }

  private static Stream<String> places(Rule rule) {
    return rule.getNodes().stream().map(node -> rule.getId() + " at " + node.getTarget());
  }
}
