package org.hedgerow.faults;

/** One kind of bad weather. */
interface Scenario {
  /** In small letters with hyphens, for the command line. */
  String name();

  /** Runs it on servers and a data folder of its own, and stops them. */
  Result run(Ground ground) throws Exception;

  /** Prints how far the scenario has got. */
  default void progress(int done, int all) {
    System.err.printf("%s: %d of %d%n", name(), done, all);
  }
}
