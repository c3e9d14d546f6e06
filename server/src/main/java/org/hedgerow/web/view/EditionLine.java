package org.hedgerow.web.view;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.hedgerow.lexicon.PublishedEdition;

/**
 * An edition in a list of them.
 *
 * @param at when it was published, for people
 * @param by who decided; an empty text where the program did
 */
public record EditionLine(int number, String at, String by, String summary, int words) {
  private static final DateTimeFormatter FORMAT =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm 'UTC'", Locale.ENGLISH)
          .withZone(ZoneOffset.UTC);

  public static EditionLine of(PublishedEdition edition) {
    return new EditionLine(
        edition.number(),
        FORMAT.format(edition.at()),
        edition.by().orElse(""),
        edition.summary(),
        edition.words());
  }

  public String address() {
    return "/editions/" + number;
  }

  public String count() {
    return words == 1 ? "1 word changed" : words + " words changed";
  }
}
