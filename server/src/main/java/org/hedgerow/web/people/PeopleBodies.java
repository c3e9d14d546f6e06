package org.hedgerow.web.people;

import java.util.Optional;
import org.hedgerow.operations.Role;
import org.hedgerow.web.query.Quoted;
import org.hedgerow.web.query.ValidationErrors;
import org.jspecify.annotations.Nullable;

/** What is sent to look after people. */
final class PeopleBodies {
  private PeopleBodies() {}

  /** What is to change about an account; what is left out stays. */
  record PersonEdit(@Nullable String role, @Nullable Boolean active) {
    boolean isEmpty() {
      return role == null && active == null;
    }
  }

  /** What is to change about the centre; what is left out stays. */
  record CentreChange(@Nullable String name, @Nullable Integer approvals) {
    boolean isEmpty() {
      return name == null && approvals == null;
    }
  }

  /**
   * An invitation.
   *
   * @param days a week if left out
   */
  record NewInvitation(@Nullable String role, @Nullable Integer days) {}

  /**
   * A token for one's own account.
   *
   * @param days ninety if left out
   */
  record NewToken(@Nullable String label, @Nullable String role, @Nullable Integer days) {}

  /** The role of an account; none, and an error, if it isn't one. */
  static Optional<Role> role(@Nullable String text, ValidationErrors errors) {
    Optional<Role> role = Optional.ofNullable(text).flatMap(Role::ofAccount);
    if (role.isEmpty()) {
      errors.invalid(
          "role",
          "role is contributor, reviewer or administrator%s."
              .formatted(text == null ? "" : ", not " + Quoted.of(text)));
    }
    return role;
  }
}
