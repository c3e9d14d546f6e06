package org.hedgerow.web.people;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import org.hedgerow.accounts.CachedCentre;
import org.hedgerow.accounts.Centre;
import org.hedgerow.accounts.CentreEdit;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.Format;
import org.hedgerow.web.http.IfMatch;
import org.hedgerow.web.http.Json;
import org.hedgerow.web.http.Sending;
import org.hedgerow.web.query.ValidationErrors;
import org.hedgerow.web.security.Identity;

/** {@code /centre}: what a centre chooses for itself. */
final class CentreHandlers {
  /** The centre, as programs see it. */
  record View(Optional<String> name, int approvals) {
    static View of(Centre centre) {
      return new View(centre.name(), centre.approvals());
    }
  }

  private final CachedCentre known;
  private final JsonBody bodies;
  private final Json json;

  CentreHandlers(CachedCentre known, JsonBody bodies, Json json) {
    this.known = known;
    this.bodies = bodies;
    this.json = json;
  }

  /** From memory: whoever reads needs no database. */
  void show(Context context) {
    ApiRequest.requireNoParameters(context);
    Centre centre = known.get();
    Sending.file(
        context,
        json.bytes(View.of(centre)),
        Format.JSON.contentType(),
        tag(centre),
        Sending.REVALIDATED);
  }

  void change(Context context) {
    ApiRequest.requireNoParameters(context);
    PeopleBodies.CentreChange wanted = bodies.read(context, PeopleBodies.CentreChange.class);
    ValidationErrors errors = ValidationErrors.ofBody();
    if (wanted.isEmpty()) {
      errors.invalid("name", "Nothing is to change. Give name, approvals or both.");
    }
    errors.throwIfAny();
    CentreEdit edit =
        new CentreEdit(Optional.ofNullable(wanted.name()), Optional.ofNullable(wanted.approvals()));
    IfMatch seen = IfMatch.required(context, "the centre as you read it");
    send(
        context,
        known.change(Identity.of(context).actor(), edit, centre -> seen.permits(tag(centre))));
  }

  private void send(Context context, Centre centre) {
    context
        .header(Header.ETAG, tag(centre))
        .contentType(Format.JSON.contentType())
        .result(json.bytes(View.of(centre)));
  }

  private static String tag(Centre centre) {
    return "\"centre-%d\"".formatted(centre.version());
  }
}
