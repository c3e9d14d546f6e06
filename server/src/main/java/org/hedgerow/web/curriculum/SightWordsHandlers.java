package org.hedgerow.web.curriculum;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.Optional;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.review.curriculum.SightWordsDraft;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.view.NamedSetView;

/** {@code /sight-words/{name}}: the words that a centre teaches whole. */
final class SightWordsHandlers {
  private final CurriculumServices services;
  private final Editions editions;
  private final JsonBody bodies;
  private final SetAnswers answers;

  public SightWordsHandlers(CurriculumServices services, Editions editions, ObjectMapper mapper) {
    this.services = services;
    this.editions = editions;
    this.bodies = JsonBody.toKeep(mapper);
    this.answers = new SetAnswers(mapper);
  }

  public void save(Context context) {
    ApiRequest.requireNoParameters(context);
    NamedSetView.Words sent = bodies.read(context, NamedSetView.Words.class);
    SightWordsDraft draft =
        new SightWordsDraft(name(context), sent.title(), sent.note(), sent.words());
    NamedSetView.Words yours = new NamedSetView.Words(draft.title(), draft.note(), draft.words());
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () -> services.saveSightWords().execute(actor(context), draft, mark(seen, draft.name())),
        late -> answers.late(late, Optional.of(yours), now(context)));
  }

  public void withdraw(Context context) {
    ApiRequest.requireNoParameters(context);
    String name = name(context);
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () -> services.withdrawSightWords().execute(actor(context), name, mark(seen, name)),
        late ->
            answers.late(
                late,
                seen.edition().flatMap(edition -> named(edition, name)).map(NamedSetView.Words::of),
                now(context)));
  }

  private static Optional<SightWords> named(Lexicon edition, String name) {
    return edition.plans().sightWords().named(name);
  }

  private static Optional<String> mark(SeenEdition seen, String name) {
    return seen.mark(edition -> named(edition, name), SightWordsDraft::mark);
  }

  private Optional<NamedSetView.Words> now(Context context) {
    return named(editions.newest(), name(context)).map(NamedSetView.Words::of);
  }

  private static String name(Context context) {
    return context.pathParam("name");
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
