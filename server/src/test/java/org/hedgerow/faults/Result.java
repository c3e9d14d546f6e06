package org.hedgerow.faults;

import java.time.Duration;
import java.util.List;

/**
 * What came of a scenario.
 *
 * @param done what was done, in a few words
 * @param acknowledged writes and decisions that were answered 2xx
 * @param troubles what mustn't be, in words: answers with unexpected statuses, hangs, damage
 * @param slowest the slowest answer
 * @param remark what else was measured; may be empty
 */
record Result(
    String scenario,
    String done,
    long requests,
    long acknowledged,
    long lost,
    long doubled,
    List<String> troubles,
    Duration slowest,
    String remark) {

  boolean isSound() {
    return lost == 0 && doubled == 0 && troubles.isEmpty();
  }

  static Result of(String scenario, String done, Tally tally, Reckoning reckoning, String remark) {
    return new Result(
        scenario,
        done,
        tally.requests(),
        reckoning.acknowledged(),
        reckoning.lost().size(),
        reckoning.doubled().size(),
        reckoning.and(tally.troubles()),
        tally.slowest(),
        remark);
  }

  /** Of a scenario that couldn't be finished. */
  static Result broken(String scenario, Throwable problem) {
    return new Result(
        scenario, "not finished", 0, 0, 0, 0, List.of(problem.toString()), Duration.ZERO, "");
  }
}
