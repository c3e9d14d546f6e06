package org.hedgerow.web.page;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.Identity;

/**
 * What the top of a page says about who looks at it.
 *
 * @param name what others see of them; empty for visitors
 * @param role what they may do
 * @param formToken for signing out
 * @param centre what the centre is called, or an empty text
 * @param waiting how many contributions wait for a decision of theirs; empty where nothing can be
 *     contributed
 */
public record PageHeader(
    String name, Role role, String formToken, String centre, OptionalInt waiting) {
  private static final int MAX_SHOWN = 99;

  static PageHeader ofVisitor(String centre) {
    return new PageHeader("", Role.VISITOR, "", centre, OptionalInt.empty());
  }

  static PageHeader of(Context context, FormTokens forms, PageLayout frame) {
    Actor actor = Identity.of(context).actor();
    String centre = frame.centre().get();
    return actor
        .account()
        .map(Account::displayName)
        .map(
            name ->
                new PageHeader(
                    name,
                    actor.role(),
                    forms.token(context),
                    centre,
                    count(actor, frame.waiting())))
        .orElseGet(() -> ofVisitor(centre));
  }

  private static OptionalInt count(Actor actor, Optional<PendingCount> waiting) {
    if (waiting.isEmpty()) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(actor.role().allows(Role.REVIEWER) ? waiting.get().count(actor) : 0);
  }

  boolean administrator() {
    return role == Role.ADMINISTRATOR;
  }

  public boolean contributes() {
    return waiting.isPresent() && role.allows(Role.CONTRIBUTOR);
  }

  boolean reviews() {
    return waiting.isPresent() && role.allows(Role.REVIEWER);
  }

  /** As in {@code 12} or {@code 99+}. */
  String waitingInShort() {
    int count = waiting.orElse(0);
    return count > MAX_SHOWN ? MAX_SHOWN + "+" : String.valueOf(count);
  }

  boolean isVisitors() {
    return name.isEmpty();
  }
}
