package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.OwnershipException;
import org.hedgerow.review.StaleRevisionException;

/** Deciding on one contribution, then on the next. */
final class DecisionPages {
  private final ReviewPageSupport desk;
  private final DecisionForms decisions;

  DecisionPages(ReviewPageSupport desk, DecisionForms decisions) {
    this.desk = desk;
    this.decisions = decisions;
  }

  void show(Context context) {
    show(context, "", "");
  }

  private void show(Context context, String problem, String comment) {
    int id = ReviewPageSupport.id(context);
    Optional<Undo> undo = QueuePages.decided(desk, context);
    String news = Confirmation.of(Optional.ofNullable(context.queryParam("done")).orElse(""));
    DecisionMaker maker = new DecisionMaker(desk, desk.actor(context), desk.token(context));
    desk.show(
        context,
        "review/decision.jte",
        maker.page(id, neighbours(context, id), undo, news, problem, comment));
  }

  private Neighbours neighbours(Context context, int id) {
    return Neighbours.of(
        desk.review()
            .queue()
            .places(
                desk.actor(context),
                ContributionQuery.seenBy(desk.accountId(context), ContributionQuery.MAX)),
        id);
  }

  void decide(Context context) {
    Actor actor = desk.actor(context);
    int id = ReviewPageSupport.id(context);
    Fields fields = Fields.of(context);
    Neighbours neighbours = neighbours(context, id);
    try {
      goOn(context, fields, decisions.one(actor, id, fields), neighbours);
    } catch (StaleRevisionException stale) {
      context.status(412);
      show(context, meanwhile(stale.present()), fields.text("comment"));
    } catch (ConflictException conflict) {
      context.status(409);
      show(context, already(actor, conflict), fields.text("comment"));
    } catch (RejectedException refused) {
      context.status(400);
      show(context, messages(refused.errors()), fields.text("comment"));
    } catch (OwnershipException own) {
      context.status(403);
      show(context, own.getMessage() + ".", fields.text("comment"));
    }
  }

  private static String meanwhile(Contribution present) {
    return "%s has changed it meanwhile. You see it as it is now; nothing was decided."
        .formatted(present.author().name());
  }

  /** What happened meanwhile, and by whom. */
  private String already(Actor actor, ConflictException conflict) {
    Contribution present = conflict.present();
    return desk.review().reviews().open(actor, present.id()).decisions().stream()
        .filter(each -> present.state() != ContributionState.SUBMITTED)
        .reduce((first, second) -> second)
        .map(
            last ->
                "%s %s before you. Nothing else was changed."
                    .formatted(last.by().name(), ReviewWording.of(last.kind())))
        .orElse(conflict.getMessage() + ". Nothing was changed.");
  }

  private static String messages(List<FieldError> errors) {
    return String.join(" ", errors.stream().map(FieldError::message).distinct().toList());
  }

  /** To the next that waits; after an overruling it is still the same one's turn. */
  private void goOn(Context context, Fields fields, Contribution decided, Neighbours neighbours) {
    String decision = fields.text("decision");
    boolean waits = decided.state() == ContributionState.SUBMITTED;
    String done = waits && decision.equals("approve") ? "vote" : decision;
    if (!Undo.of(decided).isPresent() && !done.equals("vote")) {
      desk.goOn(context, "/review/%d?done=%s".formatted(decided.id(), done));
      return;
    }
    OptionalInt next = neighbours.next();
    String place = next.isPresent() ? "/review/" + next.getAsInt() : "/review";
    desk.goOn(context, "%s?after=%d%s".formatted(place, decided.id(), waits ? "&done=vote" : ""));
  }
}
