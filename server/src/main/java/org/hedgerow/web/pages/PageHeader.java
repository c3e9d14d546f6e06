package org.hedgerow.web.pages;

import io.javalin.http.Context;
import org.hedgerow.accounts.Account;
import org.hedgerow.accounts.Role;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.Identity;

/**
 * What the top of a page says about who looks at it.
 *
 * @param name what others see of them; empty for visitors
 * @param administrator whether they look after accounts
 * @param formToken for signing out
 */
record PageHeader(String name, boolean administrator, String formToken) {
  static final PageHeader VISITOR = new PageHeader("", false, "");

  static PageHeader of(Context context, FormTokens forms) {
    Identity identity = Identity.of(context);
    return identity
        .actor()
        .account()
        .map(Account::displayName)
        .map(
            name ->
                new PageHeader(
                    name, identity.actor().role() == Role.ADMINISTRATOR, forms.token(context)))
        .orElse(VISITOR);
  }

  boolean isVisitors() {
    return name.isEmpty();
  }
}
