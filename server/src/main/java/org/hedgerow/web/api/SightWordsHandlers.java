package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.review.SightWordsDraft;
import org.hedgerow.review.TeachingServices;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.security.Identity;

/** {@code /sight-words/{name}}: the words that a centre teaches whole. */
final class SightWordsHandlers {
  private final TeachingServices services;
  private final JsonBody bodies;
  private final Json json;

  SightWordsHandlers(TeachingServices services, JsonBody bodies, Json json) {
    this.services = services;
    this.bodies = bodies;
    this.json = json;
  }

  void save(Context context) {
    Asked.nothing(context);
    Bodies.SightWordsEdit sent = bodies.read(context, Bodies.SightWordsEdit.class);
    SightWordsDraft draft =
        new SightWordsDraft(name(context), sent.title(), sent.note(), sent.words());
    send(context, services.saveSightWords().execute(actor(context), draft, Optional.empty()));
  }

  void withdraw(Context context) {
    Asked.nothing(context);
    String name = name(context);
    send(context, services.withdrawSightWords().execute(actor(context), name, Optional.empty()));
  }

  private static String name(Context context) {
    return context.pathParam("name");
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }

  private void send(Context context, int edition) {
    context
        .header(Header.CACHE_CONTROL, "no-store")
        .contentType(Format.JSON.contentType())
        .result(json.bytes(new TeachingHandlers.View(edition, name(context))));
  }
}
