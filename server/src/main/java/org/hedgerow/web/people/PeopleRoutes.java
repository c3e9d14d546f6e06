package org.hedgerow.web.people;

import static org.hedgerow.operations.Role.ADMINISTRATOR;
import static org.hedgerow.operations.Role.CONTRIBUTOR;
import static org.hedgerow.operations.Role.VISITOR;

import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.page.PageWriter;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.FormTokens;
import org.hedgerow.web.security.SessionCookie;

/** The table of routes about accounts. Whoever is signed in is a contributor at least. */
public final class PeopleRoutes implements RouteGroup {
  private final SignInPages signIn;
  private final WelcomePages welcome;
  private final OwnAccountPages own;
  private final AdministrationPages administration;
  private final AuditPages audit;
  private final CentrePages centrePages;

  public PeopleRoutes(
      AccountServices accounts,
      CachedCentre centre,
      PageWriter writer,
      FormTokens forms,
      SessionCookie cookies,
      Clients clients) {
    AccountPageSupport desk =
        new AccountPageSupport(accounts, centre, writer, forms, cookies, clients);
    this.signIn = new SignInPages(desk);
    this.welcome = new WelcomePages(desk, signIn);
    this.own = new OwnAccountPages(desk);
    this.administration = new AdministrationPages(desk);
    this.audit = new AuditPages(desk);
    this.centrePages = new CentrePages(desk);
  }

  @Override
  public void addTo(Routes routes) {
    routes.get("/welcome/{secret}", VISITOR, welcome::show);
    routes.form("/welcome/{secret}", VISITOR, welcome::accept);
    routes.get("/sign-in", VISITOR, signIn::show);
    routes.form("/sign-in", VISITOR, signIn::signIn);
    routes.form("/sign-out", VISITOR, signIn::signOut);
    routes.get("/account", CONTRIBUTOR, own::show);
    routes.form("/account/name", CONTRIBUTOR, own::rename);
    routes.form("/account/password", CONTRIBUTOR, own::changePassword);
    routes.form("/account/sessions/end", CONTRIBUTOR, own::endSession);
    routes.form("/account/sessions/end-others", CONTRIBUTOR, own::endOtherSessions);
    routes.form("/account/tokens", CONTRIBUTOR, own::makeToken);
    routes.form("/account/tokens/revoke", CONTRIBUTOR, own::revokeToken);
    routes.get("/people", ADMINISTRATOR, administration::show);
    routes.form("/people/invitations", ADMINISTRATOR, administration::invite);
    routes.form("/people/invitations/withdraw", ADMINISTRATOR, administration::withdraw);
    routes.get("/people/{id}", ADMINISTRATOR, administration::showPerson);
    routes.form("/people/{id}/role", ADMINISTRATOR, administration::changeRole);
    routes.form("/people/{id}/active", ADMINISTRATOR, administration::changeActive);
    routes.form("/people/{id}/link", ADMINISTRATOR, administration::link);
    routes.form("/people/{id}/sessions/end", ADMINISTRATOR, administration::endSession);
    routes.form("/people/{id}/tokens/revoke", ADMINISTRATOR, administration::revokeToken);
    routes.get("/audit", ADMINISTRATOR, audit::show);
    routes.get("/centre", ADMINISTRATOR, centrePages::show);
    routes.form("/centre", ADMINISTRATOR, centrePages::change);
  }
}
