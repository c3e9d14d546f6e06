package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.web.security.Identity;

/** What everybody can do about their own account. */
final class OwnAccountPages {
  private static final Map<String, String> DONE =
      Map.of(
          "welcome", "Welcome! You are signed in.",
          "name", "The name that others see is changed.",
          "password", "Your password is changed. You are signed out everywhere else.",
          "session", "Signed out there.",
          "token", "The token is revoked: no program can use it any more.");

  private final AccountPageSupport desk;

  OwnAccountPages(AccountPageSupport desk) {
    this.desk = desk;
  }

  void show(Context context) {
    String done = Optional.ofNullable(context.queryParam("done")).orElse("");
    show(
        context,
        Form.fresh(desk.token(context)),
        DONE.getOrDefault(done, ""),
        RevealedSecret.NOTHING);
  }

  private void show(Context context, Form form, String done, RevealedSecret shown) {
    Actor actor = desk.actor(context);
    Account account = actor.requireAccount();
    desk.show(
        context,
        "people/account.jte",
        new OwnAccountPage(
            form,
            account.name(),
            account.displayName(),
            account.role().label(),
            done,
            shown,
            roles(account),
            ListRows.sessions(
                desk.accounts().sessions().of(actor, account.id()), Optional.of(session(context))),
            ListRows.tokens(desk.accounts().tokens().of(actor, account.id()))));
  }

  private static List<String> roles(Account account) {
    return Arrays.stream(Role.values())
        .filter(role -> role != Role.VISITOR && account.role().allows(role))
        .map(Role::label)
        .toList();
  }

  private static int session(Context context) {
    return Identity.of(context).session().map(login -> login.session().id()).orElse(-1);
  }

  void rename(Context context) {
    String name = Form.shortened(context, "displayName");
    orRefuse(
        context,
        Map.of("displayName", name),
        () -> {
          desk.accounts().people().rename(desk.actor(context), id(context), name);
          desk.goOn(context, "/account?done=name");
        });
  }

  void changePassword(Context context) {
    orRefuse(
        context,
        Map.of(),
        () -> {
          desk.accounts()
              .passwords()
              .change(
                  desk.actor(context),
                  Form.sent(context, "oldPassword"),
                  Form.sent(context, "password"),
                  session(context));
          desk.goOn(context, "/account?done=password");
        });
  }

  void endSession(Context context) {
    desk.accounts()
        .sessions()
        .end(desk.actor(context), id(context), Form.number(context, "session"));
    desk.goOn(context, "/account?done=session");
  }

  void endOtherSessions(Context context) {
    desk.accounts()
        .sessions()
        .endAll(desk.actor(context), id(context), Optional.of(session(context)));
    desk.goOn(context, "/account?done=session");
  }

  void makeToken(Context context) {
    String label = Form.shortened(context, "label");
    orRefuse(
        context,
        Map.of("label", label),
        () -> {
          Secret token =
              desk.accounts()
                  .tokens()
                  .make(
                      desk.actor(context), label, Form.role(context), Form.number(context, "days"));
          RevealedSecret shown =
              new RevealedSecret("The token. Copy it now: it can’t be shown again.", token.text());
          show(context, Form.fresh(desk.token(context)), "", shown);
        });
  }

  void revokeToken(Context context) {
    desk.accounts()
        .tokens()
        .revoke(desk.actor(context), id(context), Form.number(context, "token"));
    desk.goOn(context, "/account?done=token");
  }

  private void orRefuse(Context context, Map<String, String> typed, Runnable work) {
    try {
      work.run();
    } catch (RejectedException refused) {
      context.status(400);
      show(context, Form.refused(desk.token(context), typed, refused), "", RevealedSecret.NOTHING);
    }
  }

  private int id(Context context) {
    return desk.actor(context).requireAccount().id();
  }
}
