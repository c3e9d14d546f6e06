package org.hedgerow.web.people;

import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.EntityTag;
import org.hedgerow.web.http.IfMatch;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.PathNumber;
import org.hedgerow.web.query.KeysetParameters;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.security.Identity;

/** {@code /people}: accounts with their sessions and tokens, for administrators. */
final class PeopleHandlers {
  private static final int MAX_LIMIT = 500;

  private final AccountServices accounts;
  private final JsonBody bodies;
  private final Json json;

  PeopleHandlers(AccountServices accounts, JsonBody bodies, Json json) {
    this.accounts = accounts;
    this.bodies = bodies;
    this.json = json;
  }

  void list(Context context) {
    Parameters parameters =
        ApiRequest.json(context, List.of(KeysetParameters.AFTER, KeysetParameters.LIMIT))
            .parameters();
    int limit = KeysetParameters.limit(parameters, MAX_LIMIT);
    parameters.errors().throwIfAny();
    List<Account> all = accounts.people().all(actor(context));
    context.json(PeopleView.of(all, parameters.text(KeysetParameters.AFTER), limit));
  }

  void show(Context context) {
    ApiRequest.requireNoParameters(context);
    send(context, account(context));
  }

  void edit(Context context) {
    ApiRequest.requireNoParameters(context);
    PeopleBodies.PersonEdit edit = bodies.read(context, PeopleBodies.PersonEdit.class);
    ValidationErrors errors = ValidationErrors.ofBody();
    Optional<Role> role =
        Optional.ofNullable(edit.role()).flatMap(text -> PeopleBodies.role(text, errors));
    if (edit.isEmpty()) {
      errors.invalid("role", "Nothing is to change. Give role, active or both.");
    }
    errors.throwIfAny();
    IfMatch seen = IfMatch.required(context, "the account as you read it");
    Account changed =
        accounts
            .people()
            .edit(
                actor(context),
                PathNumber.of(context, "id"),
                role,
                Optional.ofNullable(edit.active()),
                account -> seen.permits(tag(account)));
    send(context, changed);
  }

  private void send(Context context, Account account) {
    context.header(Header.ETAG, tag(account)).json(PersonView.of(account));
  }

  private String tag(Account account) {
    return EntityTag.of(json.bytes(PersonView.of(account)));
  }

  void sessions(Context context) {
    ApiRequest.requireNoParameters(context);
    int id = account(context).id();
    context.json(SessionView.All.of(accounts.sessions().of(actor(context), id)));
  }

  void endSession(Context context) {
    ApiRequest.requireNoParameters(context);
    accounts
        .sessions()
        .end(actor(context), PathNumber.of(context, "id"), PathNumber.of(context, "session"));
    context.status(204);
  }

  void endSessions(Context context) {
    ApiRequest.requireNoParameters(context);
    accounts.sessions().endAll(actor(context), account(context).id(), Optional.empty());
    context.status(204);
  }

  void tokens(Context context) {
    ApiRequest.requireNoParameters(context);
    int id = account(context).id();
    context.json(TokenView.All.of(accounts.tokens().of(actor(context), id)));
  }

  void revokeToken(Context context) {
    ApiRequest.requireNoParameters(context);
    accounts
        .tokens()
        .revoke(actor(context), PathNumber.of(context, "id"), PathNumber.of(context, "token"));
    context.status(204);
  }

  private Account account(Context context) {
    return accounts
        .people()
        .find(actor(context), PathNumber.of(context, "id"))
        .orElseThrow(NotFoundResponse::new);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
