package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.web.problems.ProblemType;

/** Collects what is wrong with one question. For one thread. */
public final class Faults {

  /** A client may send thousands of wrong parameters; nobody would read about them all. */
  private static final int MOST = 20;

  private final List<Fault> faults = new ArrayList<>();
  private final ProblemType general;

  private Faults(ProblemType general) {
    this.general = general;
  }

  /** For a question in the query of an address. */
  public static Faults ofQuery() {
    return new Faults(ProblemType.INVALID_PARAMETER);
  }

  /** For a question in a body. */
  public static Faults ofBody() {
    return new Faults(ProblemType.INVALID_BODY);
  }

  /** Adds a fault that has no type of its own. */
  public void invalid(String parameter, String message) {
    add(Fault.of(general, parameter, message));
  }

  void invalid(String parameter, String message, Optional<String> nearest) {
    add(new Fault(general, parameter, message, nearest));
  }

  public void add(Fault fault) {
    if (faults.size() < MOST) {
      faults.add(fault);
    }
  }

  public boolean isEmpty() {
    return faults.isEmpty();
  }

  public List<Fault> list() {
    return List.copyOf(faults);
  }

  /**
   * @throws InvalidQueryException if there are any
   */
  public void throwIfAny() {
    if (!faults.isEmpty()) {
      throw new InvalidQueryException(faults);
    }
  }
}
