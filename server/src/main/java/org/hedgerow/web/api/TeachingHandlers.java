package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.review.RulesDraft;
import org.hedgerow.review.SequenceDraft;
import org.hedgerow.review.TeachingServices;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.security.Identity;

/** {@code /rules/{name}} and {@code /sequences/{name}}: what a centre chooses from. */
final class TeachingHandlers {
  private static final String NAME = "name";

  /** Which edition has it. */
  record View(int edition, String name) {}

  private final TeachingServices services;
  private final JsonBody bodies;
  private final Json json;

  TeachingHandlers(TeachingServices services, JsonBody bodies, Json json) {
    this.services = services;
    this.bodies = bodies;
    this.json = json;
  }

  void saveRules(Context context) {
    Asked.nothing(context);
    Bodies.RulesEdit sent = bodies.read(context, Bodies.RulesEdit.class);
    RulesDraft draft = new RulesDraft(name(context), sent.title(), sent.note(), sent.switches());
    send(context, services.saveRules().execute(actor(context), draft, Optional.empty()));
  }

  void withdrawRules(Context context) {
    Asked.nothing(context);
    String name = name(context);
    send(context, services.withdrawRules().execute(actor(context), name, Optional.empty()));
  }

  void saveSequence(Context context) {
    Asked.nothing(context);
    Bodies.SequenceEdit sent = bodies.read(context, Bodies.SequenceEdit.class);
    SequenceDraft draft = new SequenceDraft(name(context), sent.title(), sent.note(), sent.steps());
    int edition = services.saveSequence().execute(actor(context), draft, Optional.empty());
    send(context, edition);
  }

  void withdrawSequence(Context context) {
    Asked.nothing(context);
    String name = name(context);
    send(context, services.withdrawSequence().execute(actor(context), name, Optional.empty()));
  }

  private static String name(Context context) {
    return context.pathParam(NAME);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }

  private void send(Context context, int edition) {
    context
        .header(Header.CACHE_CONTROL, "no-store")
        .contentType(Format.JSON.contentType())
        .result(json.bytes(new View(edition, name(context))));
  }
}
