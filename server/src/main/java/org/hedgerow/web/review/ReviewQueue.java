package org.hedgerow.web.review;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.Queue;
import org.hedgerow.review.Queue.Place;
import org.hedgerow.review.Queue.Waiting;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.ValidationErrors;

/** {@code GET /review-queue}: what waits for a decision, the greatest need first. */
final class ReviewQueue {
  static final List<String> PARAMETERS =
      List.of("kind", "author", "serves", "about", "after", "limit");

  /** More than can wait in any centre. */
  private static final int MAX = 20_000;

  private final Queue queue;
  private final ContributionAnswer answer;

  ReviewQueue(Queue queue, ContributionAnswer answer) {
    this.queue = queue;
    this.answer = answer;
  }

  /**
   * Some of what waits.
   *
   * @param total how many there are in all
   * @param next where the list goes on
   */
  record View(int total, List<Entry> waiting, Optional<String> next) {}

  /**
   * Something that waits.
   *
   * @param need the most needed of the values that it serves; left out if it serves none
   * @param rank of the need, from 1, the greatest; left out likewise
   * @param own whether it is the reviewer's own, who may not decide on it
   */
  record Entry(
      @JsonInclude(JsonInclude.Include.NON_EMPTY) String need,
      OptionalInt rank,
      @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean own,
      ContributionView contribution) {}

  void list(ApiRequest request) {
    ValidationErrors errors = request.parameters().errors();
    ContributionFilters filters = new ContributionFilters(request.parameters(), request.actor());
    ContributionQuery query = filters.query(OptionalInt.empty(), MAX);
    int limit = filters.limit();
    Optional<QueuePlace> after = after(request.parameters().text(KeysetParameters.AFTER), errors);
    errors.throwIfAny();
    List<Place> all = queue.places(request.actor(), query);
    List<Place> rest =
        all.stream().filter(each -> after.isEmpty() || after.get().isBefore(each)).toList();
    KeysetPage<Place> page = KeysetPage.of(rest, limit, QueuePlace::of);
    List<Waiting> shown = queue.at(request.actor(), page.items());
    request
        .context()
        .json(new View(all.size(), shown.stream().map(this::entry).toList(), page.next()));
  }

  private static Optional<QueuePlace> after(Optional<String> text, ValidationErrors errors) {
    Optional<QueuePlace> place = text.flatMap(QueuePlace::read);
    if (text.isPresent() && place.isEmpty()) {
      errors.add(KeysetParameters.invalid(text.get()));
    }
    return place;
  }

  private Entry entry(Waiting waiting) {
    Place place = waiting.place();
    return new Entry(
        place.value(),
        place.value().isEmpty() ? OptionalInt.empty() : OptionalInt.of(place.rank() + 1),
        place.own(),
        answer.view(waiting.contribution()));
  }
}
