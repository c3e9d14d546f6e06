package org.hedgerow.web.curriculum;

import static org.hedgerow.operations.Role.ADMINISTRATOR;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.review.curriculum.ChangeCurriculum;
import org.hedgerow.review.curriculum.SaveSet;
import org.hedgerow.review.curriculum.SetDraft;
import org.hedgerow.review.curriculum.SetKind;
import org.hedgerow.review.curriculum.WithdrawSet;
import org.hedgerow.web.Routes;
import org.hedgerow.web.security.Identity;

/** The pages on which an administrator changes named sets of one kind. */
abstract class SetPages<T extends NamedSet, D extends SetDraft<T>> {
  private final SetKind<T, D> kind;
  private final String path;
  private final String listTemplate;
  private final String formTemplate;
  private final SetPageSupport support;
  private final ChangeCurriculum change;

  /**
   * @param path of the page that lists them
   */
  SetPages(
      SetKind<T, D> kind,
      String path,
      String listTemplate,
      String formTemplate,
      SetPageSupport support,
      ChangeCurriculum change) {
    this.kind = kind;
    this.path = path;
    this.listTemplate = listTemplate;
    this.formTemplate = formTemplate;
    this.support = support;
    this.change = change;
  }

  final void addTo(Routes routes) {
    routes.get(path, ADMINISTRATOR, this::list);
    routes.get(path + "/edit", ADMINISTRATOR, this::edit);
    routes.form(path + "/edit", ADMINISTRATOR, this::save);
    routes.form(path + "/withdraw", ADMINISTRATOR, this::withdraw);
  }

  /** All that teachers can choose from. */
  abstract List<T> all(Lexicon edition);

  /** Why a set can't be changed or withdrawn; empty if it can. */
  abstract String fixed(T set, Lexicon edition);

  /** A draft without a name, with what is in a model if there is one. */
  abstract D begin(Optional<T> model, Lexicon edition);

  /** What was typed into the form. */
  abstract D typed(Context context);

  /** What the template of the form shows. */
  abstract Object form(Context context, SetForm<D> form, Lexicon newest);

  final Optional<T> find(Lexicon edition, String name) {
    return kind.find().apply(edition.plans().curriculum(), name);
  }

  private void list(Context context) {
    Lexicon newest = support.newest();
    Optional<String> undo =
        support.undo(context, path, (edition, name) -> find(edition, name).isPresent());
    List<SetsPage.Row> rows = all(newest).stream().map(set -> row(set, newest)).toList();
    support.show(
        context,
        listTemplate,
        new SetsPage(support.token(context), SetPageSupport.done(context), undo, rows));
  }

  private SetsPage.Row row(T set, Lexicon edition) {
    return new SetsPage.Row(
        set.name(), set.title(), set.note(), kind.mark(Optional.of(set)), fixed(set, edition));
  }

  private void edit(Context context) {
    Lexicon newest = support.newest();
    String name = SetPageSupport.asked(context, "name");
    if (name.isEmpty()) {
      String model = SetPageSupport.asked(context, "copy");
      Optional<T> copied = all(newest).stream().filter(set -> set.name().equals(model)).findFirst();
      show(context, begin(copied, newest), "", true, "", Map.of());
    } else {
      Lexicon edition = support.edition(context);
      T set = find(edition, name).orElseThrow(() -> SetPageSupport.missing(name, edition));
      Optional<T> now = find(newest, name);
      show(context, kind.draft().apply(set), kind.mark(now), now.isEmpty(), "", Map.of());
    }
  }

  private void show(
      Context context,
      D draft,
      String seen,
      boolean isNew,
      String conflict,
      Map<String, String> errors) {
    SetForm<D> form =
        new SetForm<>(
            support.token(context),
            draft,
            seen,
            isNew,
            support.former(context, path, draft.name()),
            conflict,
            errors);
    support.show(context, formTemplate, form(context, form, support.newest()));
  }

  private void save(Context context) {
    D draft = typed(context);
    String seen = SetPageSupport.sent(context, "seen");
    boolean isNew = seen.isEmpty();
    try {
      int edition = change.execute(actor(context), new SaveSet<>(kind, draft), Optional.of(seen));
      support.goOn(context, path, edition, draft.name());
    } catch (RejectedException refused) {
      context.status(400);
      show(context, draft, seen, isNew, "", SetPageSupport.errors(refused));
    } catch (StaleUpdateException late) {
      context.status(412);
      String now = kind.mark(find(support.newest(), draft.name()));
      show(context, draft, isNew ? seen : now, isNew, String.valueOf(late.getMessage()), Map.of());
    }
  }

  private void withdraw(Context context) {
    String name = SetPageSupport.sent(context, "name");
    String seen = SetPageSupport.sent(context, "seen");
    int edition = change.execute(actor(context), new WithdrawSet<>(kind, name), Optional.of(seen));
    support.goOn(context, path, edition, name);
  }

  private static Actor actor(Context context) {
    return Identity.of(context).actor();
  }
}
