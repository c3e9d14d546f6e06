package org.hedgerow.web.security;

import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.InvalidLinkException;
import org.hedgerow.operations.DamagedRecordsException;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.operations.StorageFullException;
import org.hedgerow.operations.UnavailableException;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.OwnershipException;
import org.hedgerow.review.StaleRevisionException;
import org.hedgerow.web.problems.ParameterError;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** What services refuse, as problems. */
public final class Refusals {
  private Refusals() {}

  /** The problem that something thrown stands for, if it does. */
  public static Optional<RuntimeException> problem(RuntimeException thrown) {
    return found(thrown).map(RuntimeException.class::cast);
  }

  private static Optional<ProblemException> found(RuntimeException thrown) {
    if (thrown instanceof NotAllowedException refused) {
      return problem(
          ProblemType.NOT_ALLOWED, "That takes the role %s.".formatted(refused.needed().label()));
    }
    if (thrown instanceof NotFoundException || thrown instanceof InvalidLinkException) {
      return problem(ProblemType.NOT_FOUND, thrown.getMessage() + ".");
    }
    if (thrown instanceof StaleUpdateException) {
      return problem(
          ProblemType.CHANGED_MEANWHILE,
          thrown.getMessage() + " Look at it again, then send the change once more.");
    }
    if (thrown instanceof StorageFullException) {
      return problem(
          ProblemType.STORAGE_FULL,
          "Not saved: the disk of the server is full. Tell whoever runs the server, and try again later.");
    }
    if (thrown instanceof UnavailableException) {
      return problem(
          ProblemType.UNAVAILABLE, "That isn't possible just now. Try again in a moment.");
    }
    if (thrown instanceof DamagedRecordsException) {
      return problem(
          ProblemType.UNAVAILABLE,
          "What that needs is damaged on the server's disk. Tell whoever runs this server to restore a backup.");
    }
    if (thrown instanceof RejectedException refused) {
      return Optional.of(problem(refused).exception());
    }
    if (thrown instanceof OwnershipException) {
      return problem(ProblemType.NOT_YOURS, thrown.getMessage() + ".");
    }
    if (thrown instanceof StaleRevisionException) {
      return problem(ProblemType.STALE, thrown.getMessage() + ". Read it again.");
    }
    if (thrown instanceof ConflictException) {
      return problem(ProblemType.CONFLICT, thrown.getMessage() + ".");
    }
    return Optional.empty();
  }

  private static Optional<ProblemException> problem(ProblemType type, String detail) {
    return Optional.of(Problem.of(type, detail).exception());
  }

  private static Problem problem(RejectedException refused) {
    List<ParameterError> errors =
        refused.errors().stream()
            .map(error -> new ParameterError(error.field(), error.message()))
            .toList();
    return new Problem(
        ProblemType.INVALID_BODY,
        ProblemType.INVALID_BODY.status(),
        String.valueOf(refused.getMessage()),
        errors);
  }
}
