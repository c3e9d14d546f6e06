package org.hedgerow.operations;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What somebody may do; each role may do all that those before it may. */
public enum Role {
  /** Reads. Nobody has an account for that. */
  VISITOR,
  /** Proposes words, pronunciations, pictures and the like. */
  CONTRIBUTOR,
  /** Decides on what others propose. */
  REVIEWER,
  /** Looks after accounts. */
  ADMINISTRATOR;

  /** Whether whoever has this role may do what another is needed for. */
  public boolean allows(Role needed) {
    return compareTo(needed) >= 0;
  }

  /** The lesser of two. */
  public Role atMost(Role other) {
    return allows(other) ? other : this;
  }

  /** As people and programs write it. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The role of an account that is written so, if there is one. */
  public static Optional<Role> ofAccount(String label) {
    return Arrays.stream(values())
        .filter(role -> role != VISITOR && role.label().equals(label))
        .findFirst();
  }
}
