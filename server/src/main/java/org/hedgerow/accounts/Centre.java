package org.hedgerow.accounts;

import java.util.Optional;

/**
 * The centre whose word bank this is.
 *
 * @param name in any script; none until somebody says it
 * @param approvals how many reviewers must approve a contribution: 1 or 2
 * @param version counts the changes
 */
public record Centre(Optional<String> name, int approvals, int version) {
  /** As it is before anybody said anything. */
  public static final Centre UNNAMED = new Centre(Optional.empty(), 1, 1);

  Centre with(CentreEdit edit) {
    Centre changed =
        new Centre(edit.name().or(this::name), edit.approvals().orElse(approvals), version);
    return changed.equals(this) ? this : new Centre(changed.name, changed.approvals, version + 1);
  }

  Centre newer(Centre other) {
    return version >= other.version ? this : other;
  }
}
