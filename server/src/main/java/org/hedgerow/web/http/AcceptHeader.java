package org.hedgerow.web.http;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The header {@code Accept}: media ranges with their weights (RFC 9110, section 12.5.1). */
final class AcceptHeader {

  private final List<Choice> choices;

  AcceptHeader(String header) {
    this.choices =
        Arrays.stream(header.toLowerCase(Locale.ROOT).split(",", -1)).map(Choice::of).toList();
  }

  /** The format with the greatest weight, the first of those if there are several. */
  Optional<Format> best(List<Format> formats) {
    return formats.stream()
        .filter(format -> weight(format.mediaType()) > 0)
        .min(Comparator.comparing(format -> -weight(format.mediaType())));
  }

  /** The most exact range that fits decides. */
  private double weight(String mediaType) {
    return choices.stream()
        .filter(choice -> choice.fits(mediaType))
        .max(Comparator.comparing(choice -> choice.range().replace("*", "").length()))
        .map(Choice::weight)
        .orElse(0.0);
  }

  private record Choice(String range, double weight) {

    static Choice of(String text) {
      String[] parts = text.split(";", -1);
      return new Choice(parts[0].strip(), weight(parts));
    }

    private static double weight(String[] parts) {
      return Arrays.stream(parts)
          .map(String::strip)
          .filter(part -> part.matches("q=[01](\\.[0-9]{0,3})?"))
          .map(part -> Double.valueOf(part.substring(2)))
          .findFirst()
          .orElse(1.0);
    }

    boolean fits(String mediaType) {
      return range.equals(mediaType)
          || range.equals("*/*")
          || (range.endsWith("/*") && mediaType.startsWith(range.substring(0, range.length() - 1)));
    }
  }
}
