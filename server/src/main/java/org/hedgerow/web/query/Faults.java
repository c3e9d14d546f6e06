package org.hedgerow.web.query;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one question. For one thread. */
public final class Faults {

  /** A client may send thousands of wrong parameters; nobody would read about them all. */
  private static final int MOST = 20;

  private final List<Fault> faults = new ArrayList<>();

  public void add(Fault fault) {
    if (faults.size() < MOST) {
      faults.add(fault);
    }
  }

  public boolean isEmpty() {
    return faults.isEmpty();
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
