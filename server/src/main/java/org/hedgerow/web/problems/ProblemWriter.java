package org.hedgerow.web.problems;

import io.javalin.http.Context;

/** Answers a request with a problem, in the form that suits whoever asked. */
@FunctionalInterface
public interface ProblemWriter {
  void write(Context context, Problem problem);
}
