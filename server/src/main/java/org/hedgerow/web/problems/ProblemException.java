package org.hedgerow.web.problems;

/** Ends the handling of a request with a problem. */
public class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Problem problem;

  protected ProblemException(Problem problem) {
    super(problem.detail());
    this.problem = problem;
  }

  public Problem problem() {
    return problem;
  }
}
