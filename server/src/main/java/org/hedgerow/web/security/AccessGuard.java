package org.hedgerow.web.security;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.Role;
import org.hedgerow.web.Guard;
import org.hedgerow.web.Route;
import org.hedgerow.web.RouteGroup;
import org.hedgerow.web.Routes;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Lets those through to a route who have its role, and forms that come from our own pages. */
public final class AccessGuard implements Guard, RouteGroup {
  private static final Logger LOG = LoggerFactory.getLogger(AccessGuard.class);

  private static final String INTERFACE = "/api/";

  private final Authenticator authenticator;
  private final FormTokens forms;
  private final Clients clients;

  public AccessGuard(AccountServices accounts, FormTokens forms, Clients clients) {
    this.authenticator = new Authenticator(accounts, new SessionCookie(clients));
    this.forms = forms;
    this.clients = clients;
  }

  /** Prepares every request, so that the page of a problem knows too who looks at it. */
  @Override
  public void addTo(Routes routes) {
    routes.before(
        context -> {
          context.attribute(
              LazyIdentity.ATTRIBUTE, new LazyIdentity(() -> authenticator.identify(context)));
        });
  }

  @Override
  public Handler guard(Route route, Handler handler) {
    return context -> {
      try {
        if (admits(route, context)) {
          handler.handle(context);
        }
      } catch (RuntimeException thrown) {
        throw Refusals.problem(thrown).orElse(thrown);
      }
    };
  }

  /** Whether to go on; a person is sent to sign in where that helps. */
  private boolean admits(Route route, Context context) {
    if (isForAll(route, context)) {
      return true;
    }
    Identity identity = Identity.of(context);
    if (!identity.actor().role().allows(route.role())) {
      return refuse(route, identity, context);
    }
    if (isForgeable(route, identity) && !isOurs(context)) {
      throw refused(
          context,
          ProblemType.FORGED_REQUEST,
          "The form was made too long ago or elsewhere. Load the page again and send it once more.");
    }
    if (!identity.isVisitor()) {
      context.header(Header.CACHE_CONTROL, "no-store");
    }
    return true;
  }

  private static boolean isForAll(Route route, Context context) {
    return route.role() == Role.VISITOR && !route.form() && !Authenticator.hasToken(context);
  }

  /**
   * A browser sends its cookie along whoever made the request; a program sends its token itself.
   */
  private static boolean isForgeable(Route route, Identity identity) {
    return route.form() || (!route.isSafe() && identity.session().isPresent());
  }

  private boolean isOurs(Context context) {
    return SameOrigin.mayBe(context, clients.address()) && forms.isOurs(context);
  }

  private boolean refuse(Route route, Identity identity, Context context) {
    if (!identity.isVisitor()) {
      throw refused(
          context,
          ProblemType.NOT_ALLOWED,
          "That takes the role %s; yours is %s. Ask an administrator of your centre."
              .formatted(route.role().label(), identity.actor().role().label()));
    }
    if (route.isSafe() && !context.path().startsWith(INTERFACE)) {
      context.header(Header.CACHE_CONTROL, "no-store");
      context.redirect("/sign-in?then=" + encoded(address(context)), HttpStatus.SEE_OTHER);
      return false;
    }
    throw refused(
        context,
        ProblemType.NOT_SIGNED_IN,
        "That takes the role %s, and nobody is signed in (any more). Sign in, or send a token."
            .formatted(route.role().label()));
  }

  private ProblemException refused(Context context, ProblemType type, String detail) {
    LOG.info(
        "Refused: {} at {} {} from {}",
        type.slug(),
        context.method().name(),
        Optional.ofNullable(context.endpoints().lastHttpEndpoint())
            .map(endpoint -> endpoint.path)
            .orElse(""),
        clients.address(context));
    return Problem.of(type, detail).exception();
  }

  private static String address(Context context) {
    return context.queryString() == null
        ? context.path()
        : context.path() + "?" + context.queryString();
  }

  private static String encoded(String address) {
    return URLEncoder.encode(LocalPath.of(address), StandardCharsets.UTF_8);
  }
}
