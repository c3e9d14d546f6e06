package org.hedgerow.web.people;

import static org.hedgerow.operations.Role.CONTRIBUTOR;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.security.IdempotentRequests;
import org.hedgerow.web.security.Identity;

/** What programs can do about the account that they act for. */
public final class AccountRoutes implements RouteGroup {
  private static final String ACCOUNT = "/api/v1/account";
  private static final String TOKENS = ACCOUNT + "/tokens";

  private final OwnTokenHandlers tokens;
  private final IdempotentRequests once;

  public AccountRoutes(AccountServices accounts, IdempotentRequests once, ObjectMapper mapper) {
    this.once = once;
    this.tokens = new OwnTokenHandlers(accounts.tokens(), new JsonBody(mapper));
  }

  @Override
  public void addTo(Routes routes) {
    routes.get(ACCOUNT, CONTRIBUTOR, context -> context.json(AccountView.of(Identity.of(context))));
    routes.get(TOKENS, CONTRIBUTOR, tokens::list);
    routes.post(TOKENS, CONTRIBUTOR, once.handler(tokens::make));
    routes.delete(TOKENS + "/{token}", CONTRIBUTOR, tokens::revoke);
  }
}
