package org.hedgerow.web.people;

import static org.hedgerow.operations.Role.ADMINISTRATOR;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.http.Cors;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.IdempotentRequests;

/** The table of routes by which programs look after a centre. */
public final class AdministrationRoutes implements RouteGroup {
  private static final String PEOPLE = "/api/v1/people";
  private static final String PERSON = PEOPLE + "/{id}";
  private static final String CENTRE = "/api/v1/centre";
  private static final String INVITATIONS = "/api/v1/invitations";

  private final IdempotentRequests once;
  private final PeopleHandlers people;
  private final InvitationHandlers invitations;
  private final AuditHandler audit;
  private final CentreHandlers centre;

  public AdministrationRoutes(
      AccountServices accounts,
      CachedCentre centre,
      Clients clients,
      IdempotentRequests once,
      ObjectMapper mapper) {
    this.once = once;
    Json json = new Json(mapper);
    JsonBody bodies = new JsonBody(mapper);
    this.people = new PeopleHandlers(accounts, bodies, json);
    this.invitations = new InvitationHandlers(accounts.invitations(), clients, bodies);
    this.centre = new CentreHandlers(centre, bodies, json);
    this.audit = new AuditHandler(accounts.audit(), json);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get(PEOPLE, ADMINISTRATOR, people::list);
    routes.get(PERSON, ADMINISTRATOR, people::show);
    routes.patch(PERSON, ADMINISTRATOR, people::edit);
    routes.get(PERSON + "/sessions", ADMINISTRATOR, people::sessions);
    routes.delete(PERSON + "/sessions", ADMINISTRATOR, people::endSessions);
    routes.delete(PERSON + "/sessions/{session}", ADMINISTRATOR, people::endSession);
    routes.get(PERSON + "/tokens", ADMINISTRATOR, people::tokens);
    routes.delete(PERSON + "/tokens/{token}", ADMINISTRATOR, people::revokeToken);
    routes.get(INVITATIONS, ADMINISTRATOR, invitations::list);
    routes.post(INVITATIONS, ADMINISTRATOR, once.handler(invitations::make));
    routes.delete(INVITATIONS + "/{id}", ADMINISTRATOR, invitations::withdraw);
    routes.get(CENTRE, centre::show);
    Cors.allow(routes, CENTRE, "GET");
    routes.patch(CENTRE, ADMINISTRATOR, centre::change);
    routes.get(AuditHandler.PATH, ADMINISTRATOR, audit);
  }
}
