package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ConflictException;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.DecisionKind;
import org.hedgerow.review.DecisionRequest;
import org.hedgerow.review.OwnershipException;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.review.StaleRevisionException;

/** Takes decisions as forms ask for them. */
record DecisionForms(ReviewServices review) {

  /**
   * @throws RejectedException if there is no such decision
   */
  Contribution one(Actor actor, int id, Fields fields) {
    return review
        .decide()
        .execute(
            actor,
            new DecisionRequest(
                id,
                fields.number("revision"),
                kind(fields),
                fields.text("comment"),
                fields.text("finding")));
  }

  private static DecisionKind kind(Fields fields) {
    return DecisionKind.labelled(fields.text("decision"))
        .orElseThrow(
            () ->
                new RejectedException(List.of(new FieldError("decision", "Say what you decide."))));
  }

  /** On all that were picked, each on its own, so that one that fails keeps no other back. */
  List<QueuePage.Result> many(Actor actor, Fields fields) {
    List<QueuePage.Result> results = new ArrayList<>();
    for (String picked : fields.all("pick")) {
      String[] parts = picked.split("-", 2);
      if (parts.length == 2) {
        int id = Fields.number(parts[0], 0);
        results.add(result(actor, id, Fields.number(parts[1], 0), fields));
      }
    }
    return results;
  }

  private QueuePage.Result result(Actor actor, int id, int revision, Fields fields) {
    try {
      Contribution decided =
          review
              .decide()
              .execute(
                  actor, DecisionRequest.of(kind(fields), id, revision, fields.text("comment")));
      return new QueuePage.Result(
          id, decided.proposal().subject(), true, ReviewWording.ofOthers(decided.state()));
    } catch (StaleRevisionException stale) {
      return failed(stale.present(), "It has been changed meanwhile. Look at it once more.");
    } catch (ConflictException conflict) {
      return failed(conflict.present(), conflict.getMessage() + ".");
    } catch (OwnershipException own) {
      return new QueuePage.Result(id, "", false, own.getMessage() + ".");
    } catch (RejectedException refused) {
      return new QueuePage.Result(id, "", false, String.valueOf(refused.getMessage()));
    } catch (NotFoundException gone) {
      return new QueuePage.Result(id, "", false, "It is no longer there.");
    }
  }

  private static QueuePage.Result failed(Contribution present, String message) {
    return new QueuePage.Result(present.id(), present.proposal().subject(), false, message);
  }
}
