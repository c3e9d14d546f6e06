package org.hedgerow.fuzz;

/**
 * A request that was answered as none may be.
 *
 * @param number of the request within the run
 * @param what is wrong with the answer
 */
record Fault(long number, HostileRequest request, String what, Answer answer) {

  /** Equal for errors that most likely have the same cause. */
  String kind() {
    boolean grave = what.startsWith("status") || what.startsWith("no answer");
    return grave ? what + " at " + route() : what;
  }

  private String route() {
    String path = request.target().split("\\?", 2)[0];
    return request.isToInterface()
        ? request.method() + path.replaceAll("(?<=/api/v1/[a-z-]{1,30}/)[^/]+", "…")
        : "a page";
  }
}
