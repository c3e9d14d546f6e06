package org.hedgerow.web.review;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationError;

/** Reads which contributions somebody wants to see. */
final class ContributionFilters {
  static final List<String> NAMES =
      List.of("state", "kind", "author", "serves", "about", "after", "limit");

  private static final int DEFAULT = 50;
  private static final int MAX = 200;
  private static final int MAX_SUBJECT_LENGTH = 300;

  private final Parameters parameters;
  private final Actor actor;

  ContributionFilters(Parameters parameters, Actor actor) {
    this.parameters = parameters;
    this.actor = actor;
  }

  /** One more than the limit, so that it is known whether there are more. */
  ContributionQuery query() {
    return query(number("after"), limit() + 1);
  }

  /** As far as they filter, from the beginning. */
  ContributionQuery query(OptionalInt before, int most) {
    return new ContributionQuery(
        states(), kind(), author(), serves(), about(), before, actor.requireAccount().id(), most);
  }

  int limit() {
    OptionalInt limit = number("limit");
    if (limit.orElse(DEFAULT) > MAX) {
      invalid("limit", "limit must be a whole number from 1 to %d.".formatted(MAX));
      return MAX;
    }
    return limit.orElse(DEFAULT);
  }

  private Set<ContributionState> states() {
    Set<ContributionState> states = EnumSet.noneOf(ContributionState.class);
    for (String label : parameters.text("state").map(text -> text.split(",", -1)).orElse(NONE)) {
      named(
              "state",
              label.strip(),
              ContributionState::labelled,
              ContributionState.values(),
              ContributionState::label)
          .ifPresent(states::add);
    }
    return states;
  }

  private static final String[] NONE = {};

  private Optional<ContributionKind> kind() {
    return parameters
        .text("kind")
        .flatMap(
            label ->
                named(
                    "kind",
                    label,
                    ContributionKind::labelled,
                    ContributionKind.values(),
                    ContributionKind::label));
  }

  private <T> Optional<T> named(
      String parameter,
      String label,
      Function<String, Optional<T>> find,
      T[] all,
      Function<T, String> labels) {
    Optional<T> found = find.apply(label);
    if (found.isEmpty()) {
      invalid(
          parameter,
          "%s can't be %s. Choose from %s."
              .formatted(
                  parameter,
                  Quoted.of(label),
                  String.join(", ", Arrays.stream(all).map(labels).toList())));
    }
    return found;
  }

  private OptionalInt author() {
    return parameters.text("author").filter("me"::equals).isPresent()
        ? OptionalInt.of(actor.requireAccount().id())
        : number("author");
  }

  private Optional<String> serves() {
    Optional<String> text = parameters.text("serves");
    Optional<String> label = text.flatMap(ProposalContext::label);
    if (text.isPresent() && label.isEmpty()) {
      invalid(
          "serves",
          "serves must be a phonogram and the number of its value, as in oa-1, not %s."
              .formatted(Quoted.of(text.get())));
    }
    return label;
  }

  private Optional<String> about() {
    Optional<String> about = parameters.text("about");
    if (about
        .filter(text -> text.length() > MAX_SUBJECT_LENGTH || text.indexOf('\0') >= 0)
        .isPresent()) {
      invalid("about", "about must be a word or a sentence of the bank.");
      return Optional.empty();
    }
    return about;
  }

  private OptionalInt number(String parameter) {
    Optional<String> text = parameters.text(parameter);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!text.get().matches("[1-9][0-9]{0,8}")) {
      notANumber(parameter, text.get());
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(text.get()));
  }

  private void notANumber(String parameter, String text) {
    if (parameter.equals("after")) {
      parameters
          .errors()
          .add(
              ValidationError.of(
                  ProblemType.INVALID_CURSOR,
                  parameter,
                  "%s is no place in this list. Take the next of the answer before."
                      .formatted(Quoted.of(text))));
    } else {
      String or = parameter.equals("author") ? "me, or " : "";
      invalid(
          parameter,
          "%s must be %sa whole number from 1, not %s.".formatted(parameter, or, Quoted.of(text)));
    }
  }

  private void invalid(String parameter, String message) {
    parameters.errors().invalid(parameter, message);
  }
}
