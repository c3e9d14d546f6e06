package org.hedgerow.web.review;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * A moment, for people. Where scripts run, browsers show it in their own zone; the server's is
 * nobody's.
 *
 * @param machine as in ISO 8601
 * @param words in Universal Time
 */
record Times(String machine, String words) {
  private static final DateTimeFormatter FORMAT =
      DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm 'UTC'", Locale.ENGLISH)
          .withZone(ZoneOffset.UTC);

  static Times of(Instant moment) {
    return new Times(moment.truncatedTo(ChronoUnit.SECONDS).toString(), FORMAT.format(moment));
  }
}
