package org.hedgerow.web.query;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;

/** A question that can't be answered as it stands, with everything that is wrong with it. */
public final class InvalidQueryException extends ProblemException {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * @param faults at least one
   */
  InvalidQueryException(List<Fault> faults) {
    super(problem(faults));
    this.faults = List.copyOf(faults);
  }

  public List<Fault> faults() {
    return faults;
  }

  /** Of the type of the first fault, those in the question itself before what it asks for. */
  private static Problem problem(List<Fault> faults) {
    List<Fault> sorted =
        faults.stream().sorted(Comparator.comparing(fault -> fault.type().status())).toList();
    Fault first = sorted.get(0);
    return new Problem(
        first.type(),
        first.type().status(),
        sorted.stream().map(Fault::message).collect(joining(" ")),
        sorted.stream().map(Fault::error).toList());
  }
}
