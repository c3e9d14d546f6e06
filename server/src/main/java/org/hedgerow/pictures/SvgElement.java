package org.hedgerow.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An element of an SVG document.
 *
 * @param attributes by name; {@code xlink:href} is called {@code href}
 */
record SvgElement(String name, Map<String, String> attributes, List<SvgElement> children) {

  SvgElement {
    children = List.copyOf(children);
  }

  Optional<String> attribute(String attribute) {
    return Optional.ofNullable(attributes.get(attribute));
  }

  /** This one and all below it. */
  Stream<SvgElement> all() {
    List<SvgElement> all = new ArrayList<>();
    addTo(all);
    return all.stream();
  }

  private void addTo(List<SvgElement> all) {
    all.add(this);
    children.forEach(child -> child.addTo(all));
  }
}
