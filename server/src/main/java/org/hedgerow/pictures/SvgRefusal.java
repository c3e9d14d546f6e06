package org.hedgerow.pictures;

import static java.util.Map.entry;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Why an SVG can't be taken, in words for the person who uploads it. */
final class SvgRefusal {

  private static final int MAX_QUOTE_LENGTH = 60;

  private static final String NO_PROGRAMS =
      "Pictures may hold no programs: take it out, or draw or export the picture anew, and upload"
          + " that file.";
  private static final String NO_PAGES =
      "Take it out in a drawing program, or export the picture as PNG, and upload that file.";
  private static final String FLATTEN =
      "Leave that out, or export the picture as PNG, and upload that file.";
  private static final String STILL = "Export one still picture of it and upload that.";

  /** What is found, then what to do. */
  private record Reason(String found, String advice) {}

  private static final Reason SCRIPT = new Reason("a script", NO_PROGRAMS);
  private static final Reason MOTION = new Reason("movement", STILL);
  private static final Reason EFFECT = new Reason("effects such as blur or shadow", FLATTEN);
  private static final Reason LETTERS =
      new Reason(
          "letters",
          "Letters look different on every computer: turn them into paths in the drawing program"
              + " (Object to Path, Create Outlines), or leave them out, and upload that file.");

  private static final Map<String, Reason> ELEMENTS =
      Map.ofEntries(
          entry("script", SCRIPT),
          entry("handler", SCRIPT),
          entry("listener", SCRIPT),
          entry("foreignObject", new Reason("a piece of a web page", NO_PAGES)),
          entry(
              "image",
              new Reason("another picture inside", "Upload that picture itself, as PNG or JPEG.")),
          entry("a", new Reason("a link", NO_PAGES)),
          entry("text", LETTERS),
          entry("tspan", LETTERS),
          entry("textPath", LETTERS),
          entry("tref", LETTERS),
          entry("flowRoot", LETTERS),
          entry("animate", MOTION),
          entry("animateColor", MOTION),
          entry("animateMotion", MOTION),
          entry("animateTransform", MOTION),
          entry("set", MOTION),
          entry("filter", EFFECT),
          entry("pattern", new Reason("a repeated pattern", FLATTEN)),
          entry("marker", new Reason("arrowheads or other ends of lines", FLATTEN)));

  private static final Map<String, Reason> PROPERTIES =
      Map.ofEntries(
          entry("filter", EFFECT),
          entry("backdrop-filter", EFFECT),
          entry("mix-blend-mode", new Reason("colours that mix with those below", FLATTEN)),
          entry("marker", new Reason("arrowheads or other ends of lines", FLATTEN)),
          entry("animation", MOTION),
          entry("transition", MOTION));

  private static final Set<String> GOOD_FOR_NOTHING = Set.of("none", "normal", "inherit", "unset");

  private SvgRefusal() {}

  static UnusablePictureException element(String name) {
    Reason reason = ELEMENTS.getOrDefault(name, new Reason("something unknown", NO_PAGES));
    return refusal("%s (<%s>)".formatted(reason.found(), quote(name)), reason.advice());
  }

  static UnusablePictureException event(String attribute, String element) {
    return refusal("a script (%s on <%s>)".formatted(quote(attribute), element), NO_PROGRAMS);
  }

  static UnusablePictureException reference(String where, String target) {
    boolean script = target.strip().toLowerCase(Locale.ROOT).startsWith("javascript:");
    return script
        ? refusal("a script (%s in %s)".formatted(quote(target), where), NO_PROGRAMS)
        : refusal(
            "a reference to something outside of it (%s in %s)".formatted(quote(target), where),
            "A picture must hold all that it shows: save it with everything embedded as shapes,"
                + " or export it as PNG, and upload that file.");
  }

  /** A value of an attribute or of a property of style that isn't understood. */
  static UnusablePictureException value(String name, String value) {
    return refusal(
        "a value that is not understood (%s: %s)".formatted(quote(name), quote(value)),
        "Save it as plain SVG, or export the picture as PNG, and upload that file.");
  }

  static UnusablePictureException styleRule(String rule) {
    return refusal(
        "a style rule that can't be used (%s)".formatted(quote(rule)),
        "Export it with \"presentation attributes\" in place of style sheets, or as PNG, and"
            + " upload that file.");
  }

  /**
   * @throws UnusablePictureException if a property that isn't kept changes the picture
   */
  static void requireNeedless(String property, String value) {
    Reason reason = PROPERTIES.get(family(property));
    if (reason != null && !GOOD_FOR_NOTHING.contains(value)) {
      throw refusal(
          "%s (%s: %s)".formatted(reason.found(), quote(property), quote(value)), reason.advice());
    }
  }

  /** Whether {@link #requireNeedless} refuses some of its values. */
  static boolean mayRefuse(String property) {
    return PROPERTIES.containsKey(family(property));
  }

  private static String family(String property) {
    return property.replaceFirst("^(marker|animation|transition)-.*", "$1");
  }

  static UnusablePictureException large(String what) {
    return new UnusablePictureException(
        "This SVG %s. Simplify it in a drawing program, or export the picture as PNG, and upload"
                .formatted(what)
            + " that file.");
  }

  static UnusablePictureException refusal(String found, String advice) {
    return new UnusablePictureException("This SVG has %s in it. %s".formatted(found, advice));
  }

  /** What a stranger wrote, short and without what would not print. */
  static String quote(String text) {
    String plain = text.strip().replaceAll("[\\p{C}\\s]+", " ");
    return plain.length() <= MAX_QUOTE_LENGTH ? plain : plain.substring(0, MAX_QUOTE_LENGTH) + "…";
  }
}
