package org.hedgerow.pictures;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The elements of SVG that a picture may have, and their attributes beside those of style. */
final class SvgVocabulary {

  static final String ROOT = "svg";

  private static final List<String> BOX = List.of("x", "y", "width", "height");
  private static final List<String> VIEW =
      List.of("x", "y", "width", "height", "viewBox", "preserveAspectRatio");
  private static final List<String> GRADIENT =
      List.of("href", "gradientUnits", "gradientTransform", "spreadMethod");

  private static final Map<String, List<String>> ELEMENTS =
      Map.ofEntries(
          entry(ROOT, VIEW),
          entry("symbol", VIEW),
          entry("g", List.of()),
          entry("defs", List.of()),
          entry("use", with(BOX, "href")),
          entry("path", List.of("d", "pathLength")),
          entry("rect", with(BOX, "rx", "ry", "pathLength")),
          entry("circle", List.of("cx", "cy", "r", "pathLength")),
          entry("ellipse", List.of("cx", "cy", "rx", "ry", "pathLength")),
          entry("line", List.of("x1", "y1", "x2", "y2", "pathLength")),
          entry("polyline", List.of("points", "pathLength")),
          entry("polygon", List.of("points", "pathLength")),
          entry("linearGradient", with(GRADIENT, "x1", "y1", "x2", "y2")),
          entry("radialGradient", with(GRADIENT, "cx", "cy", "r", "fx", "fy", "fr")),
          entry("stop", List.of("offset")),
          entry("clipPath", List.of("clipPathUnits")),
          entry("mask", with(BOX, "maskUnits", "maskContentUnits")));

  private SvgVocabulary() {}

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(some.stream(), List.of(more).stream()).toList();
  }

  /** Nothing if a picture may not have the element. */
  static Optional<List<String>> attributes(String element) {
    return Optional.ofNullable(ELEMENTS.get(element));
  }
}
