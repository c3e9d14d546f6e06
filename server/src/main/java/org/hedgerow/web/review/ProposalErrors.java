package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Set;
import org.hedgerow.operations.FieldError;
import org.hedgerow.web.problems.ParameterError;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** What is wrong with a proposal, by its place in a body. */
final class ProposalErrors {
  /** Fields of decisions. */
  private static final Set<String> OF_DECISIONS = Set.of("comment", "finding");

  /** Fields beside a proposal. */
  private static final Set<String> AROUND = Set.of("wantedFor", "note");

  private ProposalErrors() {}

  static List<ParameterError> errors(List<FieldError> errors) {
    return errors.stream().map(ProposalErrors::error).toList();
  }

  private static ParameterError error(FieldError error) {
    String field = error.field();
    return new ParameterError(isOutside(field) ? field : "proposal." + field, error.message());
  }

  private static boolean isOutside(String field) {
    return OF_DECISIONS.contains(field) || AROUND.contains(field);
  }

  static Problem problem(List<FieldError> errors) {
    ProblemType type =
        OF_DECISIONS.contains(errors.get(0).field())
            ? ProblemType.INVALID_BODY
            : ProblemType.UNFIT_CONTRIBUTION;
    String detail = errors.stream().map(FieldError::message).distinct().collect(joining(" "));
    return new Problem(type, type.status(), detail, errors(errors));
  }
}
