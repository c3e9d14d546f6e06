package org.hedgerow.web.review;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.DecisionRequest;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/** Reads decisions, and refuses those that can't be meant. */
final class DecisionReader {
  /** As many as a person can have looked at. */
  private static final int MAX = 200;

  private final JsonBody bodies;

  DecisionReader(ObjectMapper mapper) {
    this.bodies = JsonBody.toKeep(mapper);
  }

  DecisionRequest one(Context context, int contribution, int revision) {
    DecisionBody body = bodies.read(context, DecisionBody.class);
    ValidationErrors errors = ValidationErrors.ofBody();
    Optional<DecisionKind> kind = kind("", body.decision(), body.finding(), errors);
    errors.throwIfAny();
    return new DecisionRequest(
        contribution, revision, kind.orElseThrow(), text(body.comment()), text(body.finding()));
  }

  List<DecisionRequest> many(Context context) {
    List<DecisionsBody.Item> items =
        Optional.ofNullable(bodies.read(context, DecisionsBody.class).decisions())
            .orElse(List.of());
    ValidationErrors errors = ValidationErrors.ofBody();
    if (items.isEmpty() || items.size() > MAX) {
      errors.invalid(
          "decisions",
          "There are %d decisions. Send from 1 to %d at once.".formatted(items.size(), MAX));
      errors.throwIfAny();
    }
    List<DecisionRequest> requests = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      request("decisions[%d].".formatted(i), items.get(i), errors).ifPresent(requests::add);
    }
    errors.throwIfAny();
    return List.copyOf(requests);
  }

  private static Optional<DecisionRequest> request(
      String place, DecisionsBody.Item item, ValidationErrors errors) {
    int contribution = number(place + "contribution", item.contribution(), errors);
    int revision = number(place + "revision", item.revision(), errors);
    return kind(place, item.decision(), item.finding(), errors)
        .map(
            kind ->
                new DecisionRequest(
                    contribution, revision, kind, text(item.comment()), text(item.finding())));
  }

  private static int number(String field, @Nullable Integer number, ValidationErrors errors) {
    if (number == null || number < 1) {
      errors.invalid(field, field + " must be a whole number from 1.");
      return 0;
    }
    return number;
  }

  private static Optional<DecisionKind> kind(
      String place, @Nullable String label, @Nullable String finding, ValidationErrors errors) {
    Optional<DecisionKind> kind = Optional.ofNullable(label).flatMap(DecisionKind::labelled);
    if (kind.isEmpty()) {
      errors.invalid(place + "decision", unknown(label));
    } else if ((kind.get() == DecisionKind.OVERRULE) != (finding != null)) {
      errors.invalid(
          place + "finding",
          finding == null
              ? "Say which finding is wrong here, by its code."
              : "Only to overrule, a finding is named. Leave it out.");
    }
    return kind;
  }

  private static String unknown(@Nullable String label) {
    String all =
        String.join(", ", Arrays.stream(DecisionKind.values()).map(DecisionKind::label).toList());
    return label == null
        ? "There is no decision. Choose from %s.".formatted(all)
        : "decision can't be %s. Choose from %s.".formatted(Quoted.of(label), all);
  }

  private static String text(@Nullable String text) {
    return Optional.ofNullable(text).orElse("");
  }
}
