package org.hedgerow.web.curriculum;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.Optional;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.view.NamedSetView;

/** {@code /rules/{name}} and {@code /sequences/{name}}: what a centre chooses from. */
final class NamedSetHandlers {
  private static final String NAME = "name";

  private final CurriculumServices services;
  private final Editions editions;
  private final JsonBody bodies;
  private final SetAnswers answers;

  public NamedSetHandlers(CurriculumServices services, Editions editions, ObjectMapper mapper) {
    this.services = services;
    this.editions = editions;
    this.bodies = JsonBody.toKeep(mapper);
    this.answers = new SetAnswers(mapper);
  }

  public void saveRules(Context context) {
    ApiRequest.requireNoParameters(context);
    NamedSetView.Rules sent = bodies.read(context, NamedSetView.Rules.class);
    RulesDraft draft = new RulesDraft(name(context), sent.title(), sent.note(), sent.switches());
    NamedSetView.Rules yours =
        new NamedSetView.Rules(
            draft.title(), draft.note(), draft.switches().stream().sorted().toList());
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () -> services.saveRules().execute(actor(context), draft, rulesMark(seen, draft.name())),
        late -> answers.late(late, Optional.of(yours), rulesNow(context)));
  }

  public void withdrawRules(Context context) {
    ApiRequest.requireNoParameters(context);
    String name = name(context);
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () -> services.withdrawRules().execute(actor(context), name, rulesMark(seen, name)),
        late ->
            answers.late(
                late,
                seen.edition().flatMap(edition -> rules(edition, name)).map(NamedSetView.Rules::of),
                rulesNow(context)));
  }

  private static Optional<RuleSet> rules(Lexicon edition, String name) {
    return edition.plans().rules().named(name);
  }

  private static Optional<String> rulesMark(SeenEdition seen, String name) {
    return seen.mark(edition -> rules(edition, name), RulesDraft::mark);
  }

  private Optional<NamedSetView.Rules> rulesNow(Context context) {
    return rules(editions.newest(), name(context)).map(NamedSetView.Rules::of);
  }

  public void saveSequence(Context context) {
    ApiRequest.requireNoParameters(context);
    NamedSetView.SequenceSteps sent = bodies.read(context, NamedSetView.SequenceSteps.class);
    SequenceDraft draft = new SequenceDraft(name(context), sent.title(), sent.note(), sent.steps());
    NamedSetView.SequenceSteps yours =
        new NamedSetView.SequenceSteps(draft.title(), draft.note(), draft.steps());
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () ->
            services
                .saveSequence()
                .execute(actor(context), draft, sequenceMark(seen, draft.name())),
        late -> answers.late(late, Optional.of(yours), sequenceNow(context)));
  }

  public void withdrawSequence(Context context) {
    ApiRequest.requireNoParameters(context);
    String name = name(context);
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () -> services.withdrawSequence().execute(actor(context), name, sequenceMark(seen, name)),
        late ->
            answers.late(
                late,
                seen.edition()
                    .flatMap(edition -> sequence(edition, name))
                    .map(NamedSetView.SequenceSteps::of),
                sequenceNow(context)));
  }

  private static Optional<Sequence> sequence(Lexicon edition, String name) {
    return edition.plans().written(name);
  }

  private static Optional<String> sequenceMark(SeenEdition seen, String name) {
    return seen.mark(edition -> sequence(edition, name), SequenceDraft::mark);
  }

  private Optional<NamedSetView.SequenceSteps> sequenceNow(Context context) {
    return sequence(editions.newest(), name(context)).map(NamedSetView.SequenceSteps::of);
  }

  private static String name(Context context) {
    return context.pathParam(NAME);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
