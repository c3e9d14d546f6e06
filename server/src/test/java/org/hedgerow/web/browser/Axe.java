package org.hedgerow.web.browser;

import com.deque.html.axecore.providers.EmbeddedResourceAxeProvider;
import java.io.IOException;
import java.util.List;
import javax.naming.OperationNotSupportedException;

/** What axe-core finds wrong with a page. */
final class Axe {
  /** Everything that it knows, its advice included. */
  private static final List<String> RULES =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice", "wcag2aaa");

  private static final String LIBRARY = library();

  private static final String RUN =
      """
      const [rules, done] = arguments;
      axe.run({ runOnly: rules, resultTypes: ['violations'] }).then(
        found => done(found.violations.flatMap(
          rule => rule.nodes.map(node => `${rule.id} at ${node.target}`))),
        problem => done([`axe-core failed: ${problem}`]));
      """;

  private Axe() {}

  /** As in {@code color-contrast at .tag}. Our pages hold no frames, which would need more. */
  static List<String> violations(Browser browser) {
    browser.script(LIBRARY);
    return ((List<?>) browser.answer(RUN, RULES)).stream().map(String::valueOf).toList();
  }

  private static String library() {
    try {
      return new EmbeddedResourceAxeProvider().getScript();
    } catch (IOException | OperationNotSupportedException problem) {
      throw new IllegalStateException(problem);
    }
  }
}
