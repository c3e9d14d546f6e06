package org.hedgerow.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The part of the plane that a picture shows.
 *
 * @param text as the attribute has it
 */
record SvgViewBox(String text, double width, double height) {

  private static final double LARGEST = 1_000_000;

  /** As narrow as a PNG or JPEG may be. */
  private static final double NARROWEST =
      (double) Dimensions.SHORTEST_SIDE / Dimensions.SCALED_SIDE;

  private static final Pattern LENGTH = Pattern.compile("([\\d.eE+-]+?)(px|pt|pc|mm|cm|in)?");

  /** As the file says, else from the size that it gives itself. */
  static SvgViewBox of(SvgElement root) {
    SvgViewBox box =
        root.attribute("viewBox")
            .map(SvgViewBox::parse)
            .or(() -> ofSize(root))
            .orElseThrow(SvgViewBox::missing);
    box.requireUsable();
    return box;
  }

  private static SvgViewBox parse(String text) {
    String[] numbers = text.split("[\\s,]+");
    double width = Double.parseDouble(numbers[2]);
    double height = Double.parseDouble(numbers[3]);
    return new SvgViewBox(String.join(" ", numbers), width, height);
  }

  private static Optional<SvgViewBox> ofSize(SvgElement root) {
    double width = root.attribute("width").map(SvgViewBox::pixels).orElse(0.0);
    double height = root.attribute("height").map(SvgViewBox::pixels).orElse(0.0);
    return width > 0 && height > 0
        ? Optional.of(
            new SvgViewBox("0 0 %s %s".formatted(plain(width), plain(height)), width, height))
        : Optional.empty();
  }

  /** 96 pixels to the inch (CSS Values and Units, level 3, 5.2); 0 if it depends on the page. */
  private static double pixels(String length) {
    Matcher matcher = LENGTH.matcher(length);
    if (!matcher.matches()) {
      return 0;
    }
    double number = Double.parseDouble(matcher.group(1));
    return switch (matcher.group(2) == null ? "px" : matcher.group(2)) {
      case "pt" -> number * 96 / 72;
      case "pc" -> number * 16;
      case "mm" -> number * 96 / 25.4;
      case "cm" -> number * 96 / 2.54;
      case "in" -> number * 96;
      default -> number;
    };
  }

  private static String plain(double number) {
    return new BigDecimal(number)
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void requireUsable() {
    boolean sized = width > 0 && height > 0 && Math.max(width, height) <= LARGEST;
    if (!sized) {
      throw missing();
    }
    if (Math.min(width, height) / Math.max(width, height) < NARROWEST) {
      throw SvgRefusal.large("is too long and narrow for a card");
    }
  }

  private static UnusablePictureException missing() {
    return new UnusablePictureException(
        "This SVG doesn't say how large its picture is (viewBox). In the drawing program fit the"
            + " page to the drawing, save it as plain SVG, and upload that file.");
  }

  Dimensions size() {
    return new Dimensions(rounded(width), rounded(height));
  }

  private static int rounded(double side) {
    return Math.max(1, (int) Math.round(side));
  }
}
