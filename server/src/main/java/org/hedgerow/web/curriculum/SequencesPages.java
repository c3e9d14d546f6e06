package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.review.curriculum.CurriculumServices;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.hedgerow.web.security.Identity;

/** The orders of teaching that a centre chooses from. */
final class SequencesPages {
  static final String PATH = "/centre/sequences";

  private final SetPageSupport desk;
  private final CurriculumServices services;

  SequencesPages(SetPageSupport desk, CurriculumServices services) {
    this.desk = desk;
    this.services = services;
  }

  private static List<Sequence> all(Lexicon edition) {
    return edition.plans().sequences(edition.accents().get(0).accent().tag());
  }

  private static Optional<Sequence> named(Lexicon edition, String name) {
    return all(edition).stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** Only one that people have written. */
  private static Optional<Sequence> written(Lexicon edition, String name) {
    return named(edition, name).filter(each -> !each.name().equals(Plans.COMPUTED));
  }

  void list(Context context) {
    List<SetsPage.Row> rows = all(desk.newest()).stream().map(SequencesPages::row).toList();
    Optional<String> undo =
        desk.undo(context, PATH, (edition, name) -> written(edition, name).isPresent());
    desk.show(
        context,
        "curriculum/sequencesets.jte",
        new SetsPage(desk.token(context), SetPageSupport.done(context), undo, rows));
  }

  private static SetsPage.Row row(Sequence sequence) {
    return new SetsPage.Row(
        sequence.name(),
        sequence.title(),
        sequence.note(),
        SequenceDraft.mark(Optional.of(sequence)),
        sequence.name().equals(Plans.COMPUTED) ? "It is worked out by the program." : "");
  }

  void edit(Context context) {
    String name = SetPageSupport.asked(context, "name");
    if (name.isEmpty()) {
      List<List<String>> steps =
          named(desk.newest(), SetPageSupport.asked(context, "copy"))
              .map(SequenceDraft::of)
              .map(SequenceDraft::steps)
              .orElse(List.of());
      SequenceDraft draft = new SequenceDraft("", "", "", steps);
      show(context, draft, draft.stepsInLines(), "", true, "", Map.of());
    } else {
      Lexicon edition = desk.edition(context);
      SequenceDraft draft =
          SequenceDraft.of(
              written(edition, name).orElseThrow(() -> SetPageSupport.missing(name, edition)));
      Optional<Sequence> now = written(desk.newest(), name);
      String seen = SequenceDraft.mark(now);
      show(context, draft, draft.stepsInLines(), seen, now.isEmpty(), "", Map.of());
    }
  }

  private void show(
      Context context,
      SequenceDraft draft,
      String lines,
      String seen,
      boolean isNew,
      String conflict,
      Map<String, String> errors) {
    desk.show(
        context,
        "curriculum/sequenceform.jte",
        new SequenceForm(
            desk.token(context),
            draft,
            lines,
            seen,
            isNew,
            desk.former(context, PATH, draft.name()),
            conflict,
            errors));
  }

  void save(Context context) {
    String lines = SetPageSupport.sent(context, "steps");
    SequenceDraft draft =
        new SequenceDraft(
            SetPageSupport.sent(context, "name"),
            SetPageSupport.sent(context, "title"),
            SetPageSupport.sent(context, "note"),
            SequenceDraft.steps(lines));
    String seen = SetPageSupport.sent(context, "seen");
    boolean isNew = seen.isEmpty();
    try {
      int edition =
          services.saveSequence().execute(Identity.of(context).actor(), draft, Optional.of(seen));
      desk.goOn(context, PATH, edition, draft.name());
    } catch (RejectedException refused) {
      context.status(400);
      show(context, draft, lines, seen, isNew, "", SetPageSupport.errors(refused));
    } catch (StaleUpdateException late) {
      context.status(412);
      String now = SequenceDraft.mark(named(desk.newest(), draft.name()));
      String message = String.valueOf(late.getMessage());
      show(context, draft, lines, isNew ? seen : now, isNew, message, Map.of());
    }
  }

  void withdraw(Context context) {
    String name = SetPageSupport.sent(context, "name");
    int edition =
        services
            .withdrawSequence()
            .execute(
                Identity.of(context).actor(),
                name,
                Optional.of(SetPageSupport.sent(context, "seen")));
    desk.goOn(context, PATH, edition, name);
  }
}
