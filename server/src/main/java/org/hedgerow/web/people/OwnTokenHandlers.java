package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.Objects;
import java.util.Optional;
import org.hedgerow.accounts.ApiToken;
import org.hedgerow.accounts.ApiTokens;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.PathNumber;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.security.Identity;

/** {@code /account/tokens}: the tokens of one's own account. */
final class OwnTokenHandlers {
  private static final int DEFAULT_DAYS = 90;

  private final ApiTokens tokens;
  private final JsonBody bodies;

  OwnTokenHandlers(ApiTokens tokens, JsonBody bodies) {
    this.tokens = tokens;
    this.bodies = bodies;
  }

  void list(Context context) {
    ApiRequest.requireNoParameters(context);
    Actor actor = actor(context);
    context.json(TokenView.All.of(tokens.of(actor, actor.requireAccount().id())));
  }

  void make(Context context) {
    ApiRequest.requireNoParameters(context);
    PeopleBodies.NewToken wanted = bodies.read(context, PeopleBodies.NewToken.class);
    ValidationErrors errors = ValidationErrors.ofBody();
    Optional<Role> role = PeopleBodies.role(wanted.role(), errors);
    errors.throwIfAny();
    ApiTokens.Made made =
        tokens.make(
            actor(context),
            Objects.requireNonNullElse(wanted.label(), ""),
            role.orElseThrow(),
            Objects.requireNonNullElse(wanted.days(), DEFAULT_DAYS),
            Identity.of(context).token().map(ApiToken::expiresAt));
    context.status(201).json(TokenView.of(made));
  }

  void revoke(Context context) {
    ApiRequest.requireNoParameters(context);
    Actor actor = actor(context);
    tokens.revoke(actor, actor.requireAccount().id(), PathNumber.of(context, "token"));
    context.status(204);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
