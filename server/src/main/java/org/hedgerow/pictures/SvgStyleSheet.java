package org.hedgerow.pictures;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The style sheets of a document: rules for elements, classes and ids, as drawing programs write
 * them. Whatever is more than that is refused; a program for style sheets would fetch, nest and
 * repeat.
 */
final class SvgStyleSheet {

  /** Each is asked of each element. */
  private static final int MAX_RULES = 300;

  private static final String OPEN = "/*";
  private static final String CLOSE = "*/";
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

    boolean holdsFor(SvgElement other, Set<String> othersClasses) {
      return (element.isEmpty() || element.equals(other.name()))
          && othersClasses.containsAll(classes)
          && ids.stream().allMatch(id -> id.equals(other.attributes().get("id")));
    }
  }

  /**
   * @throws UnusablePictureException if a rule can't be used, or a property can't be kept
   */
  static SvgStyleSheet parse(String text) {
    List<Rule> rules = new ArrayList<>();
    String rest = withoutComments(text).strip();
    while (!rest.isEmpty()) {
      int open = rest.indexOf('{');
      int close = rest.indexOf('}');
      if (rest.startsWith("@") || open < 0 || close < open) {
        throw SvgRefusal.styleRule(rest);
      }
      add(rules, rest.substring(0, open), rest.substring(open + 1, close));
      rest = rest.substring(close + 1).strip();
    }
    rules.sort(Comparator.comparingInt(Rule::weight));
    return new SvgStyleSheet(List.copyOf(rules));
  }

  private static void add(List<Rule> rules, String selectors, String block) {
    for (String selector : selectors.split(",", MAX_RULES + 1)) {
      if (rules.size() == MAX_RULES) {
        throw SvgRefusal.large("has more than %d style rules".formatted(MAX_RULES));
      }
      rules.add(rule(selector.strip(), block));
    }
  }

  private static Rule rule(String selector, String block) {
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
    String element = matcher.group(1).replace("*", "");
    return new Rule(element, classes, ids, SvgStyle.clean(declarations(element, block)));
  }

  /**
   * Of a rule, or of the attribute {@code style}: the last of a name counts.
   *
   * @param element which they are for; how large the page shows the root is the page's affair
   */
  static Map<String, String> declarations(String element, String text) {
    Map<String, String> declarations = new LinkedHashMap<>();
    for (String declaration : withoutComments(text).split(";", -1)) {
      int colon = declaration.indexOf(':');
      if (colon > 0) {
        declarations.put(
            declaration.substring(0, colon).strip().toLowerCase(Locale.ROOT),
            declaration.substring(colon + 1).replaceFirst("!\\s*important\\s*$", ""));
      }
    }
    if (element.equals(SvgVocabulary.ROOT)) {
      declarations.keySet().removeAll(List.of("width", "height"));
    }
    return declarations;
  }

  /** By hand: an expression looks for the end of each comment anew, which takes its time. */
  private static String withoutComments(String text) {
    StringBuilder plain = new StringBuilder();
    int from = 0;
    int open = text.indexOf(OPEN);
    while (open >= 0) {
      plain.append(text, from, open).append(' ');
      int close = text.indexOf(CLOSE, open + OPEN.length());
      from = close < 0 ? text.length() : close + CLOSE.length();
      open = text.indexOf(OPEN, from);
    }
    return plain.append(text, from, text.length()).toString().replaceAll("<!--|-->", " ");
  }

  /** What the rules say of an element, the weightier ones over the others. */
  Map<String, String> of(SvgElement element) {
    String names = element.attributes().getOrDefault("class", "");
    Set<String> classes = new HashSet<>(Arrays.asList(names.split("\\s+", -1)));
    Map<String, String> declarations = new LinkedHashMap<>();
    rules.stream()
        .filter(rule -> rule.holdsFor(element, classes))
        .forEach(rule -> declarations.putAll(rule.declarations()));
    return declarations;
  }
}
