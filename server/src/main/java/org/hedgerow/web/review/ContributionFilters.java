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
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.Quoted;

/** Reads which contributions somebody wants to see. */
final class ContributionFilters {
  static final List<String> NAMES =
      List.of("state", "kind", "author", "serves", "about", "after", "limit");

  private static final int MAX_LIMIT = 200;
  private static final int MAX_SUBJECT_LENGTH = 300;

  private final Parameters parameters;
  private final Actor actor;

  ContributionFilters(Parameters parameters, Actor actor) {
    this.parameters = parameters;
    this.actor = actor;
  }

  /** One more than the limit, so that it is known whether there are more. */
  ContributionQuery query() {
    return query(KeysetParameters.afterNumber(parameters), limit() + 1);
  }

  /** As far as they filter, from the beginning. */
  ContributionQuery query(OptionalInt before, int most) {
    return new ContributionQuery(
        states(), kind(), author(), serves(), about(), before, actor.requireAccount().id(), most);
  }

  int limit() {
    return KeysetParameters.limit(parameters, MAX_LIMIT);
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
    Optional<String> text = parameters.text("author");
    if (text.filter("me"::equals).isPresent()) {
      return OptionalInt.of(actor.requireAccount().id());
    }
    if (text.filter(number -> !number.matches("[1-9][0-9]{0,8}")).isPresent()) {
      invalid(
          "author",
          "author must be me, or a whole number from 1, not %s.".formatted(Quoted.of(text.get())));
      return OptionalInt.empty();
    }
    return text.map(Integer::valueOf).map(OptionalInt::of).orElse(OptionalInt.empty());
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

  private void invalid(String parameter, String message) {
    parameters.errors().invalid(parameter, message);
  }
}
