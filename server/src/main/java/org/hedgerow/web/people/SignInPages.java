package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.DurationWords;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.SignInOrigin;
import org.hedgerow.accounts.SignInResult;
import org.hedgerow.accounts.SignInResult.SignedIn;
import org.hedgerow.accounts.SignInResult.TooEarly;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.security.LocalPath;
import org.hedgerow.web.security.RateLimitHeaders;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Signing in and out. */
final class SignInPages {
  private static final Logger LOG = LoggerFactory.getLogger(SignInPages.class);

  /** As many wrong passwords as nobody waits for, in the time after which they are forgotten. */
  private static final RateLimitHeaders LIMIT =
      new RateLimitHeaders("sign-in", 5, Duration.ofDays(1));

  private final AccountPageSupport desk;

  SignInPages(AccountPageSupport desk) {
    this.desk = desk;
  }

  void show(Context context) {
    String then = LocalPath.of(Optional.ofNullable(context.queryParam("then")).orElse("/"));
    show(context, Form.fresh(desk.token(context)), then, "");
  }

  private void show(Context context, Form form, String then, String error) {
    desk.show(context, "people/signin.jte", new SignInPage(form, then, error));
  }

  void signIn(Context context) {
    String name = Form.shortened(context, "name");
    String then = LocalPath.of(Form.shortened(context, "then"));
    SignInResult result = attempt(context, name);
    if (result instanceof SignedIn) {
      desk.goOn(context, then);
    } else {
      refuse(context, name, then, result);
    }
  }

  /** Tries to sign in with the password that was sent; if it fits, the browser is signed in. */
  SignInResult attempt(Context context, String name) {
    SignInOrigin visit =
        new SignInOrigin(
            desk.clients().address(context),
            desk.clients().name(context),
            desk.cookies().device(context));
    SignInResult result =
        desk.accounts().signIn().signIn(name, Form.sent(context, "password"), visit);
    if (result instanceof SignedIn signedIn) {
      enter(context, signedIn.session());
      desk.cookies().setDevice(context, signedIn.device());
    }
    return result;
  }

  private void refuse(Context context, String name, String then, SignInResult result) {
    LOG.info("Not signed in, from {}", desk.clients().address(context));
    Form form = new Form(desk.token(context), Map.of("name", name), Map.of());
    if (result instanceof TooEarly early) {
      context.status(429);
      LIMIT.refuse(context, early.delay());
      show(
          context,
          form,
          then,
          "These were too many attempts. Try again in %s."
              .formatted(DurationWords.inWords(early.delay())));
    } else {
      context.status(401);
      show(context, form, then, "The name or the password is wrong.");
    }
  }

  /** Another session than before, so that nobody can know it beforehand. */
  private void enter(Context context, Secret fresh) {
    Identity.of(context).session().ifPresent(old -> end(context, old));
    desk.cookies().set(context, fresh);
  }

  void signOut(Context context) {
    Identity.of(context).session().ifPresent(session -> end(context, session));
    desk.cookies().clear(context);
    desk.goOn(context, "/");
  }

  private void end(Context context, Identity.Login login) {
    desk.accounts()
        .sessions()
        .end(desk.actor(context), login.session().accountId(), login.session().id());
  }
}
