package org.hedgerow.pictures;

import java.util.Map;

/** Writes an SVG document: elements, attributes in the order of the alphabet, and nothing else. */
final class SvgWriting {

  private final StringBuilder text = new StringBuilder();

  private SvgWriting() {}

  /**
   * @param root with the names and values that {@link SvgCleaning} lets through
   */
  static String text(SvgElement root) {
    SvgWriting writing = new SvgWriting();
    writing.text.append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    if (root.all().anyMatch(element -> element.attributes().containsKey("href"))) {
      writing.text.append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\"");
    }
    writing.rest(root);
    return writing.text.toString();
  }

  private void element(SvgElement element) {
    text.append('<').append(element.name());
    rest(element);
  }

  private void rest(SvgElement element) {
    element.attributes().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(attribute -> attribute(attribute.getKey(), attribute.getValue()));
    if (element.children().isEmpty()) {
      text.append("/>");
    } else {
      text.append('>');
      element.children().forEach(this::element);
      text.append("</").append(element.name()).append('>');
    }
  }

  /** The older way to write references: what makes PDF knows no other. */
  private void attribute(String name, String value) {
    text.append(' ')
        .append(name.equals("href") ? "xlink:href" : name)
        .append("=\"")
        .append(escaped(value))
        .append('"');
  }

  private static String escaped(String value) {
    return value
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replaceAll("\\s+", " ");
  }
}
