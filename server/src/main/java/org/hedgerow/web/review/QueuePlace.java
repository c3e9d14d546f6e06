package org.hedgerow.web.review;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.review.Queue.Place;

/**
 * A place in the queue: behind something that may have been decided meanwhile.
 *
 * @param rank of its need
 * @param changed in microseconds, as exactly as the database keeps it
 */
record QueuePlace(int rank, long changed, int id) {
  private static final Pattern TEXT =
      Pattern.compile("([0-9]{1,6})\\.([0-9]{1,18})\\.([1-9][0-9]{0,8})");
  private static final Comparator<QueuePlace> ORDER =
      Comparator.comparingInt(QueuePlace::rank)
          .thenComparingLong(QueuePlace::changed)
          .thenComparingInt(QueuePlace::id);

  static QueuePlace of(Place place) {
    return new QueuePlace(
        place.rank(), ChronoUnit.MICROS.between(Instant.EPOCH, place.changed()), place.id());
  }

  static Optional<QueuePlace> read(String text) {
    Matcher parts = TEXT.matcher(text);
    return parts.matches()
        ? Optional.of(
            new QueuePlace(
                Integer.parseInt(parts.group(1)),
                Long.parseLong(parts.group(2)),
                Integer.parseInt(parts.group(3))))
        : Optional.empty();
  }

  boolean isBefore(Place place) {
    return ORDER.compare(this, of(place)) < 0;
  }

  @Override
  public String toString() {
    return "%d.%d.%d".formatted(rank, changed, id);
  }
}
