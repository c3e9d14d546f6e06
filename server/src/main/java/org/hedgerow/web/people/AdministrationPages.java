package org.hedgerow.web.people;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;

/** What administrators do about accounts. */
final class AdministrationPages {
  private final AccountPageSupport desk;

  AdministrationPages(AccountPageSupport desk) {
    this.desk = desk;
  }

  void show(Context context) {
    show(context, Form.fresh(desk.token(context)), RevealedSecret.NOTHING);
  }

  private void show(Context context, Form form, RevealedSecret shown) {
    Actor actor = desk.actor(context);
    desk.show(
        context,
        "people/people.jte",
        new PeoplePage(
            form,
            shown,
            ListRows.accounts(desk.accounts().people().all(actor)),
            ListRows.links(desk.accounts().invitations().open(actor))));
  }

  void invite(Context context) {
    try {
      Secret link =
          desk.accounts()
              .invitations()
              .make(desk.actor(context), Form.role(context), Form.number(context, "days"));
      RevealedSecret shown =
          new RevealedSecret(
              "The invitation. Copy the link now and send it to one person: it can’t be shown again.",
              desk.link(context, link.text()));
      show(context, Form.fresh(desk.token(context)), shown);
    } catch (RejectedException refused) {
      context.status(400);
      show(context, Form.refused(desk.token(context), Map.of(), refused), RevealedSecret.NOTHING);
    }
  }

  void withdraw(Context context) {
    desk.accounts().invitations().withdraw(desk.actor(context), Form.number(context, "link"));
    desk.goOn(context, "/people");
  }

  void showPerson(Context context) {
    showPerson(context, Form.fresh(desk.token(context)), RevealedSecret.NOTHING);
  }

  private void showPerson(Context context, Form form, RevealedSecret shown) {
    Actor actor = desk.actor(context);
    Account account =
        desk.accounts().people().find(actor, id(context)).orElseThrow(NotFoundResponse::new);
    desk.show(
        context,
        "people/person.jte",
        new PersonPage(
            form,
            account,
            shown,
            ListRows.sessions(desk.accounts().sessions().of(actor, account.id()), Optional.empty()),
            ListRows.tokens(desk.accounts().tokens().of(actor, account.id()))));
  }

  void changeRole(Context context) {
    change(
        context,
        () ->
            desk.accounts()
                .people()
                .changeRole(desk.actor(context), id(context), Form.role(context)));
  }

  void changeActive(Context context) {
    boolean active = Form.sent(context, "active").equals("yes");
    change(
        context,
        () -> desk.accounts().people().changeActive(desk.actor(context), id(context), active));
  }

  void link(Context context) {
    Secret link = desk.accounts().passwords().link(desk.actor(context), id(context));
    RevealedSecret shown =
        new RevealedSecret(
            "A link to choose a new password with, good for two days. Copy it now: it can’t be shown again.",
            desk.link(context, link.text()));
    showPerson(context, Form.fresh(desk.token(context)), shown);
  }

  void endSession(Context context) {
    change(
        context,
        () ->
            desk.accounts()
                .sessions()
                .end(desk.actor(context), id(context), Form.number(context, "session")));
  }

  void revokeToken(Context context) {
    change(
        context,
        () ->
            desk.accounts()
                .tokens()
                .revoke(desk.actor(context), id(context), Form.number(context, "token")));
  }

  /** An administrator who made themselves something else can't look at the page any more. */
  private void change(Context context, Runnable work) {
    try {
      work.run();
      desk.goOn(context, "/people/" + id(context));
    } catch (RejectedException refused) {
      context.status(400);
      showPerson(
          context, Form.refused(desk.token(context), Map.of(), refused), RevealedSecret.NOTHING);
    }
  }

  private static int id(Context context) {
    return Form.number(context.pathParam("id"));
  }
}
