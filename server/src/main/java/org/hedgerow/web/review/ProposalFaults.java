package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Set;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.web.problems.ParameterError;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** What is wrong with a proposal, by its place in a body. */
final class ProposalFaults {
  /** Fields of decisions. */
  private static final Set<String> OF_DECISIONS = Set.of("comment", "finding");

  /** Fields beside a proposal. */
  private static final Set<String> AROUND = Set.of("wantedFor", "note");

  private ProposalFaults() {}

  static List<ParameterError> errors(List<FieldFault> faults) {
    return faults.stream().map(ProposalFaults::error).toList();
  }

  private static ParameterError error(FieldFault fault) {
    String field = fault.field();
    return new ParameterError(isOutside(field) ? field : "proposal." + field, fault.message());
  }

  private static boolean isOutside(String field) {
    return OF_DECISIONS.contains(field) || AROUND.contains(field);
  }

  static Problem problem(List<FieldFault> faults) {
    ProblemType type =
        OF_DECISIONS.contains(faults.get(0).field())
            ? ProblemType.INVALID_BODY
            : ProblemType.UNFIT_CONTRIBUTION;
    String detail = faults.stream().map(FieldFault::message).distinct().collect(joining(" "));
    return new Problem(type, type.status(), detail, errors(faults));
  }
}
