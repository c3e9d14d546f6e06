package org.hedgerow.web.security;

import io.javalin.http.Context;
import java.util.Optional;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Actor;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** Finds out who a request comes from: a program by its token, a person by their session. */
final class Authenticator {
  private static final String INTERFACE = "/api/";

  private final AccountServices accounts;
  private final SessionCookie cookies;

  Authenticator(AccountServices accounts, SessionCookie cookies) {
    this.accounts = accounts;
    this.cookies = cookies;
  }

  Identity identify(Context context) {
    return bearer(context)
        .map(this::ofToken)
        .or(() -> cookies.read(context).flatMap(this::ofSession))
        .orElse(Identity.VISITOR);
  }

  static boolean hasToken(Context context) {
    return bearer(context).isPresent();
  }

  /** Tokens are for programs only. */
  private static Optional<Secret> bearer(Context context) {
    return Bearer.of(context).filter(token -> context.path().startsWith(INTERFACE));
  }

  private Identity ofToken(Secret secret) {
    return accounts
        .tokens()
        .find(secret)
        .map(found -> new Identity(found.actor(), Optional.empty(), Optional.of(found.token())))
        .orElseThrow(
            () ->
                Problem.of(
                        ProblemType.NOT_SIGNED_IN,
                        "The token has expired, was revoked or never was. Make a new one on the page of your account.")
                    .exception());
  }

  private Optional<Identity> ofSession(Secret secret) {
    return accounts
        .sessions()
        .find(secret)
        .map(
            found ->
                new Identity(
                    Actor.of(found.account()),
                    Optional.of(new Identity.Login(found.session(), secret)),
                    Optional.empty()));
  }
}
