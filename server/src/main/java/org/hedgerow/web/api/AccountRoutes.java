package org.hedgerow.web.api;

import org.hedgerow.accounts.Role;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.security.Identity;

/** What programs can ask about accounts. */
public final class AccountRoutes implements RouteGroup {
  @Override
  public void addTo(Routes routes) {
    routes.get(
        "/api/v1/account",
        Role.CONTRIBUTOR,
        context -> context.json(AccountView.of(Identity.of(context))));
  }
}
