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

  /**
   * Of rows that are built alike, elements and classes and states, three are enough: the page of
   * needs has hundreds, each of which would take as long as the first.
   */
  private static final String RUN =
      """
      const [tags, done] = arguments;
      const built = element => element.tagName + [...element.attributes]
        .map(each => /^(class|type|role|hidden|disabled|checked|open)$/.test(each.name)
          ? `${each.name}=${each.value}` : each.name) + [...element.children].map(built);
      const alike = [];
      for (const parent of document.querySelectorAll('tbody, ul, ol, dl, div, section, p')) {
        const seen = new Map();
        for (const child of parent.children) {
          const times = (seen.get(built(child)) ?? 0) + 1;
          seen.set(built(child), times);
          if (times > 3) alike.push(child);
        }
      }
      alike.forEach(each => each.setAttribute('data-alike', ''));
      axe.run({ include: [['html']], exclude: alike.length ? [['[data-alike]']] : [] }, {
        runOnly: tags,
        resultTypes: ['violations'],
      }).then(
        found => done(found.violations.flatMap(
          rule => rule.nodes.map(node => `${rule.id} at ${node.target}`))),
        problem => done([`axe-core failed: ${problem}`]))
        .finally(() => alike.forEach(each => each.removeAttribute('data-alike')));
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
