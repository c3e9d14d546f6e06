package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.review.ContributionKind;
import org.hedgerow.review.Queue;
import org.hedgerow.review.Queue.Waiting;

/** The queue of what waits for a decision, and decisions on several at once. */
final class QueuePages {
  private final ReviewPageSupport desk;
  private final DecisionForms decisions;

  QueuePages(ReviewPageSupport desk, DecisionForms decisions) {
    this.desk = desk;
    this.decisions = decisions;
  }

  void show(Context context) {
    show(context, List.of());
  }

  private void show(Context context, List<QueuePage.Result> results) {
    Lexicon lexicon = desk.newest().get();
    QueueQuestion question = QueueQuestion.of(context);
    Actor actor = desk.actor(context);
    Queue queue = desk.review().queue();
    List<Waiting> all =
        queue.at(actor, queue.places(actor, question.query(desk.accountId(context))));
    desk.show(
        context,
        "review/queue.jte",
        new QueuePage(
            desk.token(context),
            question.in(all).stream().map(each -> QueueRow.of(each, lexicon)).toList(),
            kinds(question),
            new ValueOptions(lexicon).options("Any phonogram", question.serves()),
            authors(all, question),
            accents(lexicon, question),
            Confirmation.of(parameter(context, "done")),
            results,
            undo(context)));
  }

  private static String parameter(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).orElse("");
  }

  private static List<Option> kinds(QueueQuestion question) {
    List<Option> kinds = new ArrayList<>();
    kinds.add(Option.of("", "Any kind", question.kind()));
    Arrays.stream(ContributionKind.values())
        .map(kind -> Option.of(kind.label(), KindForm.of(kind).title(), question.kind()))
        .forEach(kinds::add);
    return kinds;
  }

  private static List<Option> authors(List<Waiting> waiting, QueueQuestion question) {
    TreeMap<String, String> authors = new TreeMap<>();
    waiting.forEach(
        each ->
            authors.put(
                each.contribution().author().name(),
                String.valueOf(each.contribution().author().accountId())));
    List<Option> options = new ArrayList<>();
    options.add(Option.of("", "Anybody", question.author()));
    authors.forEach((name, id) -> options.add(Option.of(id, name, question.author())));
    return options;
  }

  private static List<Option> accents(Lexicon lexicon, QueueQuestion question) {
    List<Option> accents = new ArrayList<>();
    accents.add(Option.of("", "Any accent", question.accent()));
    lexicon.accents().stream()
        .map(AccentCatalogue::accent)
        .map(each -> Option.of(each.tag(), each.name(), question.accent()))
        .forEach(accents::add);
    return accents;
  }

  /** What the address says was decided just before. */
  private Optional<Undo> undo(Context context) {
    return decided(desk, context);
  }

  static Optional<Undo> decided(ReviewPageSupport desk, Context context) {
    int after = Fields.number(parameter(context, "after"), 0);
    if (after == 0) {
      return Optional.empty();
    }
    try {
      return Undo.of(desk.review().reviews().open(desk.actor(context), after).contribution());
    } catch (NotFoundException gone) {
      return Optional.empty();
    }
  }

  void decideMany(Context context) {
    show(context, decisions.many(desk.actor(context), Fields.of(context)));
  }
}
