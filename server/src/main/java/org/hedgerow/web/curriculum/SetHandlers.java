package org.hedgerow.web.curriculum;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.CurriculumChange;
import org.hedgerow.review.curriculum.SaveSet;
import org.hedgerow.review.curriculum.SetDraft;
import org.hedgerow.review.curriculum.SetKind;
import org.hedgerow.review.curriculum.WithdrawSet;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.view.NamedSetView;

/** By which programs save and withdraw named sets of one kind. */
final class SetHandlers<T extends NamedSet, D extends SetDraft<T>, V extends NamedSetView<D>> {
  private final SetKind<T, D> kind;
  private final Class<V> type;
  private final Function<D, V> view;
  private final ChangeCurriculum change;
  private final Editions editions;
  private final JsonBody bodies;
  private final SetAnswers answers;

  SetHandlers(
      SetKind<T, D> kind,
      Class<V> type,
      Function<D, V> view,
      ChangeCurriculum change,
      Editions editions,
      ObjectMapper mapper) {
    this.kind = kind;
    this.type = type;
    this.view = view;
    this.change = change;
    this.editions = editions;
    this.bodies = JsonBody.toKeep(mapper);
    this.answers = new SetAnswers(mapper);
  }

  void save(Context context) {
    ApiRequest.requireNoParameters(context);
    D draft = bodies.read(context, type).toDraft(name(context));
    answer(
        context, new SaveSet<>(kind, draft), draft.name(), seen -> Optional.of(view.apply(draft)));
  }

  void withdraw(Context context) {
    ApiRequest.requireNoParameters(context);
    String name = name(context);
    answer(
        context,
        new WithdrawSet<>(kind, name),
        name,
        seen -> seen.edition().flatMap(edition -> shown(edition, name)));
  }

  /**
   * @param yours what to show as the asker's if somebody else was faster
   */
  private void answer(
      Context context,
      CurriculumChange wanted,
      String name,
      Function<SeenEdition, Optional<V>> yours) {
    SeenEdition seen = SeenEdition.of(context, editions);
    answers.send(
        context,
        () ->
            change.execute(
                Identity.of(context).actor(),
                wanted,
                seen.mark(edition -> find(edition, name), kind::mark)),
        late -> answers.late(late, yours.apply(seen), shown(editions.newest(), name)));
  }

  private Optional<T> find(Lexicon edition, String name) {
    return kind.find().apply(edition.plans().curriculum(), name);
  }

  private Optional<V> shown(Lexicon edition, String name) {
    return find(edition, name).map(kind.draft()).map(view);
  }

  private static String name(Context context) {
    return context.pathParam("name");
  }
}
