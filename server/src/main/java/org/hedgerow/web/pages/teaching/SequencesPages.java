package org.hedgerow.web.pages.teaching;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.ChangedMeanwhileException;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.reading.Sequence;
import org.hedgerow.review.SequenceDraft;
import org.hedgerow.review.TeachingServices;
import org.hedgerow.web.security.Identity;

/** The orders of teaching that a centre chooses from. */
final class SequencesPages {
  static final String PATH = "/centre/sequences";

  private final TeachingDesk desk;
  private final TeachingServices services;

  SequencesPages(TeachingDesk desk, TeachingServices services) {
    this.desk = desk;
    this.services = services;
  }

  private List<Sequence> present() {
    Lexicon newest = desk.newest().get();
    return newest.plans().sequences(newest.accents().get(0).accent().tag());
  }

  private Optional<Sequence> named(String name) {
    return present().stream().filter(each -> each.name().equals(name)).findFirst();
  }

  void list(Context context) {
    List<SetsPage.Row> rows = present().stream().map(SequencesPages::row).toList();
    desk.show(
        context,
        "sequences.jte",
        new SetsPage(desk.token(context), TeachingDesk.done(context), rows));
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
    String name = TeachingDesk.asked(context, "name");
    if (name.isEmpty()) {
      List<List<String>> steps =
          named(TeachingDesk.asked(context, "copy"))
              .map(SequenceDraft::of)
              .map(SequenceDraft::steps)
              .orElse(List.of());
      SequenceDraft draft = new SequenceDraft("", "", "", steps);
      show(context, draft, draft.stepsInLines(), "", true, "", Map.of());
    } else {
      Sequence sequence =
          named(name)
              .filter(each -> !each.name().equals(Plans.COMPUTED))
              .orElseThrow(NotFoundResponse::new);
      SequenceDraft draft = SequenceDraft.of(sequence);
      String seen = SequenceDraft.mark(Optional.of(sequence));
      show(context, draft, draft.stepsInLines(), seen, false, "", Map.of());
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
        "sequenceform.jte",
        new SequenceForm(desk.token(context), draft, lines, seen, isNew, conflict, errors));
  }

  void save(Context context) {
    String lines = TeachingDesk.sent(context, "steps");
    SequenceDraft draft =
        new SequenceDraft(
            TeachingDesk.sent(context, "name"),
            TeachingDesk.sent(context, "title"),
            TeachingDesk.sent(context, "note"),
            SequenceDraft.steps(lines));
    String seen = TeachingDesk.sent(context, "seen");
    boolean isNew = seen.isEmpty();
    try {
      int edition =
          services.saveSequence().execute(Identity.of(context).actor(), draft, Optional.of(seen));
      desk.goOn(context, PATH, edition);
    } catch (RefusedException refused) {
      context.status(400);
      show(context, draft, lines, seen, isNew, "", TeachingDesk.errors(refused));
    } catch (ChangedMeanwhileException late) {
      context.status(412);
      String now = SequenceDraft.mark(named(draft.name()));
      String message = String.valueOf(late.getMessage());
      show(context, draft, lines, isNew ? seen : now, isNew, message, Map.of());
    }
  }

  void withdraw(Context context) {
    int edition =
        services
            .withdrawSequence()
            .execute(
                Identity.of(context).actor(),
                TeachingDesk.sent(context, "name"),
                Optional.of(TeachingDesk.sent(context, "seen")));
    desk.goOn(context, PATH, edition);
  }
}
