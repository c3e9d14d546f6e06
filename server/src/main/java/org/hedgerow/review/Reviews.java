package org.hedgerow.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.Role;

/** Looks at contributions. */
public final class Reviews {
  private final ReviewContext context;

  Reviews(ReviewContext context) {
    this.context = context;
  }

  /**
   * A contribution with what was decided on it.
   *
   * @param decisions the oldest first
   * @param others that wait for a decision about the same word or sentence
   * @param errors because of which it can't be submitted or approved as the bank is now
   */
  public record Dossier(
      Contribution contribution,
      List<Decision> decisions,
      List<Contribution> others,
      List<FieldError> errors) {}

  /**
   * @throws org.hedgerow.operations.NotFoundException if there is none, or it is another's draft
   */
  public Dossier open(Actor actor, int id) {
    actor.require(Role.CONTRIBUTOR);
    return context.reading(
        unit -> dossier(unit, ReviewContext.visible(unit.contributions().find(id), actor)));
  }

  /** What belongs to a contribution that somebody has just written or decided on. */
  public Dossier about(Contribution present) {
    return context.reading(unit -> dossier(unit, present));
  }

  private Dossier dossier(ReviewUnitOfWork unit, Contribution about) {
    return new Dossier(
        about, unit.decisions().on(about.id()), others(unit, about), errors(unit, about));
  }

  private List<FieldError> errors(ReviewUnitOfWork unit, Contribution about) {
    return about.state() == ContributionState.APPROVED
            || about.state() == ContributionState.WITHDRAWN
        ? List.of()
        : about.content().errors(context.snapshot(unit));
  }

  private static List<Contribution> others(ReviewUnitOfWork unit, Contribution about) {
    String subject = about.proposal().subject();
    return subject.isEmpty()
        ? List.of()
        : unit.contributions().waitingAbout(subject).stream()
            .filter(each -> each.id() != about.id())
            .toList();
  }

  /** Nobody sees another's drafts, whatever the query says. */
  public List<Contribution> find(Actor actor, ContributionQuery query) {
    actor.require(Role.CONTRIBUTOR);
    return context.reading(unit -> unit.contributions().find(query.forViewer(actor)));
  }

  /** A picture that the actor sent, or that belongs to a contribution which they can see. */
  public Optional<Upload> upload(Actor actor, String id) {
    actor.require(Role.CONTRIBUTOR);
    int accountId = actor.requireAccount().id();
    return context.reading(unit -> unit.uploads().visible(id, accountId));
  }

  /** What the machine makes of something before it is submitted; empty while it has errors. */
  public Optional<Examination> examine(Actor actor, Content content) {
    actor.require(Role.CONTRIBUTOR);
    return context.reading(
        unit -> {
          BankSnapshot snapshot = context.snapshot(unit);
          return content.errors(snapshot).isEmpty()
              ? Optional.of(new Examiner(snapshot.lexicon()).examine(content, snapshot))
              : Optional.empty();
        });
  }
}
