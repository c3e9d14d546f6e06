package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Link;
import org.hedgerow.accounts.LinkPurpose;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.SignInResult.SignedIn;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** Where links lead that people were given: to an account, or to a new password. */
final class WelcomePages {
  private final AccountPageSupport desk;
  private final SignInPages signIn;

  WelcomePages(AccountPageSupport desk, SignInPages signIn) {
    this.desk = desk;
    this.signIn = signIn;
  }

  void show(Context context) {
    show(context, link(context), Form.fresh(desk.token(context)));
  }

  private void show(Context context, Link link, Form form) {
    String account =
        link.purpose() == LinkPurpose.NEW_PASSWORD
            ? desk.accounts().passwords().owner(secret(context)).name()
            : "";
    desk.show(context, "people/welcome.jte", new WelcomePage(form, link.role().label(), account));
  }

  void accept(Context context) {
    Link link = link(context);
    try {
      Account account = accept(context, link);
      signIn(context, account);
    } catch (RejectedException refused) {
      context.status(400);
      Map<String, String> typed =
          Map.of(
              "name", Form.shortened(context, "name"),
              "displayName", Form.shortened(context, "displayName"));
      show(context, link, Form.refused(desk.token(context), typed, refused));
    }
  }

  private Account accept(Context context, Link link) {
    String password = Form.sent(context, "password");
    return switch (link.purpose()) {
      case NEW_PASSWORD -> desk.accounts().passwords().set(secret(context), password);
      case INVITATION, FIRST_ADMINISTRATOR ->
          desk.accounts()
              .invitations()
              .accept(
                  secret(context),
                  new NewAccount(
                      Form.shortened(context, "name"),
                      Form.shortened(context, "displayName"),
                      password));
    };
  }

  private void signIn(Context context, Account account) {
    if (signIn.attempt(context, account.name()) instanceof SignedIn) {
      desk.goOn(context, "/account?done=welcome");
    } else {
      desk.goOn(context, "/sign-in");
    }
  }

  private Link link(Context context) {
    Optional<Link> link = desk.accounts().invitations().look(secret(context));
    return link.orElseThrow(WelcomePages::spent);
  }

  private static ProblemException spent() {
    return Problem.of(
            ProblemType.NOT_FOUND,
            "This link was used already, has expired or was withdrawn. Ask whoever gave it to you for a new one.")
        .exception();
  }

  private static Secret secret(Context context) {
    return new Secret(context.pathParam("secret"));
  }
}
