package org.hedgerow.web.people;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times for people, the server's zone being nobody's. */
final class Dates {
  private static final DateTimeFormatter FORMAT =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm 'UTC'", Locale.ENGLISH)
          .withZone(ZoneOffset.UTC);

  private Dates() {}

  static String of(Instant time) {
    return FORMAT.format(time);
  }
}
