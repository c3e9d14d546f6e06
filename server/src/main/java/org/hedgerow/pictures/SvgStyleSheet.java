package org.hedgerow.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The style sheets of a document: rules for elements, classes and ids, as drawing programs write
 * them. Whatever is more than that is refused; a program for style sheets would fetch, nest and
 * repeat.
 */
final class SvgStyleSheet {

  private static final int MOST_RULES = 500;
  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|<!--|-->", Pattern.DOTALL);
  private static final Pattern SELECTOR =
      Pattern.compile("(\\*|[a-zA-Z]{0,30})((?:[.#][\\p{L}_-][\\p{L}\\p{N}_-]{0,127}){0,8})");
  private static final Pattern MARK = Pattern.compile("([.#])([^.#]+)");

  private final List<Rule> rules;

  private SvgStyleSheet(List<Rule> rules) {
    this.rules = rules;
  }

  /** Holds for the elements that have all of the classes, the id and the name that it names. */
  private record Rule(
      String element, List<String> classes, List<String> ids, Map<String, String> declarations) {

    int weight() {
      return ids.size() * 10_000 + classes.size() * 100 + (element.isEmpty() ? 0 : 1);
    }

    boolean holdsFor(SvgElement other, List<String> othersClasses) {
      return (element.isEmpty() || element.equals(other.name()))
          && othersClasses.containsAll(classes)
          && ids.stream().allMatch(id -> id.equals(other.attributes().get("id")));
    }
  }

  /**
   * @throws UnusablePictureException if a rule can't be used
   */
  static SvgStyleSheet parse(String text) {
    List<Rule> rules = new ArrayList<>();
    String rest = COMMENT.matcher(text).replaceAll(" ").strip();
    while (!rest.isEmpty()) {
      int open = rest.indexOf('{');
      int close = rest.indexOf('}');
      if (rest.startsWith("@") || open < 0 || close < open || rules.size() > MOST_RULES) {
        throw SvgRefusal.styleRule(rest);
      }
      Map<String, String> declarations = declarations(rest.substring(open + 1, close));
      for (String selector : rest.substring(0, open).split(",", -1)) {
        rules.add(rule(selector.strip(), declarations));
      }
      rest = rest.substring(close + 1).strip();
    }
    rules.sort(Comparator.comparingInt(Rule::weight));
    return new SvgStyleSheet(List.copyOf(rules));
  }

  private static Rule rule(String selector, Map<String, String> declarations) {
    Matcher matcher = SELECTOR.matcher(selector);
    if (selector.isEmpty() || !matcher.matches()) {
      throw SvgRefusal.styleRule(selector);
    }
    List<String> classes = new ArrayList<>();
    List<String> ids = new ArrayList<>();
    Matcher marks = MARK.matcher(matcher.group(2));
    while (marks.find()) {
      (marks.group(1).equals(".") ? classes : ids).add(marks.group(2));
    }
    return new Rule(matcher.group(1).replace("*", ""), classes, ids, declarations);
  }

  /** Of a rule, or of the attribute {@code style}: the last of a name counts. */
  static Map<String, String> declarations(String text) {
    Map<String, String> declarations = new LinkedHashMap<>();
    for (String declaration : COMMENT.matcher(text).replaceAll(" ").split(";", -1)) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        declarations.put(
            declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            declaration.substring(colon + 1).replaceFirst("!\\s*important\\s*$", "").strip());
      }
    }
    return declarations;
  }

  /** What the rules say of an element, the weightier ones over the others. */
  Map<String, String> of(SvgElement element) {
    List<String> classes = List.of(element.attributes().getOrDefault("class", "").split("\\s+"));
    Map<String, String> declarations = new LinkedHashMap<>();
    rules.stream()
        .filter(rule -> rule.holdsFor(element, classes))
        .forEach(rule -> declarations.putAll(rule.declarations()));
    return declarations;
  }
}
