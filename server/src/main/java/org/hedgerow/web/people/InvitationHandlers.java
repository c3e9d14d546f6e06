package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.Objects;
import java.util.Optional;
import org.hedgerow.accounts.Invitations;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.PathNumber;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.security.Clients;
import org.hedgerow.web.security.Identity;

/** {@code /invitations}: links by which people get an account, for administrators. */
final class InvitationHandlers {
  private static final int DEFAULT_DAYS = 7;

  private final Invitations invitations;
  private final Clients clients;
  private final JsonBody bodies;

  InvitationHandlers(Invitations invitations, Clients clients, JsonBody bodies) {
    this.invitations = invitations;
    this.clients = clients;
    this.bodies = bodies;
  }

  void list(Context context) {
    ApiRequest.requireNoParameters(context);
    context.json(LinkView.All.of(invitations.open(actor(context))));
  }

  void make(Context context) {
    ApiRequest.requireNoParameters(context);
    PeopleBodies.NewInvitation wanted = bodies.read(context, PeopleBodies.NewInvitation.class);
    ValidationErrors errors = ValidationErrors.ofBody();
    Optional<Role> role = PeopleBodies.role(wanted.role(), errors);
    errors.throwIfAny();
    Invitations.Made made =
        invitations.invite(
            actor(context),
            role.orElseThrow(),
            Objects.requireNonNullElse(wanted.days(), DEFAULT_DAYS));
    String address = clients.origin(context) + "/welcome/" + made.secret().text();
    context.status(201).json(LinkView.of(made.link(), Optional.of(address)));
  }

  void withdraw(Context context) {
    ApiRequest.requireNoParameters(context);
    invitations.withdraw(actor(context), PathNumber.of(context, "id"));
    context.status(204);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
