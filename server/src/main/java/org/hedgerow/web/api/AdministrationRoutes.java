package org.hedgerow.web.api;

import static org.hedgerow.accounts.Role.ADMINISTRATOR;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;

/** The table of routes by which programs look after a centre. */
public final class AdministrationRoutes implements RouteGroup {
  private final AuditHandler audit;

  public AdministrationRoutes(AccountServices accounts, ObjectMapper mapper) {
    Json json = new Json(mapper);
    this.audit = new AuditHandler(accounts.audit(), json);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get(AuditHandler.PATH, ADMINISTRATOR, audit);
  }
}
