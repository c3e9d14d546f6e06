package org.hedgerow.review;

/**
 * What a reviewer wants to decide.
 *
 * @param contribution its number
 * @param revision which the reviewer saw
 * @param comment why; may be empty where the kind needs none
 * @param finding the code of the finding to overrule; empty for every other kind
 */
public record DecisionRequest(
    int contribution, int revision, DecisionKind kind, String comment, String finding) {

  /** A decision of any kind but {@link DecisionKind#OVERRULE}. */
  public static DecisionRequest of(
      DecisionKind kind, int contribution, int revision, String comment) {
    return new DecisionRequest(contribution, revision, kind, comment, "");
  }

  /**
   * @param finding the code of the one that is wrong here
   */
  public static DecisionRequest overrule(
      int contribution, int revision, String finding, String comment) {
    return new DecisionRequest(contribution, revision, DecisionKind.OVERRULE, comment, finding);
  }
}
