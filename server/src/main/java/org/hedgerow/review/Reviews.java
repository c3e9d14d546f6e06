package org.hedgerow.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.Role;

/** Looks at contributions. */
public final class Reviews {
  private final Workroom room;

  Reviews(Workroom room) {
    this.room = room;
  }

  /**
   * A contribution with what was decided on it.
   *
   * @param decisions the oldest first
   * @param others that wait for a decision about the same word or sentence
   * @param faults because of which it can't be submitted or approved as the bank is now
   */
  public record Dossier(
      Contribution contribution,
      List<Decision> decisions,
      List<Contribution> others,
      List<FieldFault> faults) {}

  /**
   * @throws org.hedgerow.accounts.NothingThereException if there is none, or it is another's draft
   */
  public Dossier open(Actor actor, int id) {
    actor.require(Role.CONTRIBUTOR);
    return room.reading(
        page -> dossier(page, Workroom.visible(page.contributions().find(id), actor)));
  }

  /** What belongs to a contribution that somebody has just written or decided on. */
  public Dossier about(Contribution present) {
    return room.reading(page -> dossier(page, present));
  }

  private Dossier dossier(ReviewPage page, Contribution about) {
    return new Dossier(
        about, page.decisions().on(about.id()), others(page, about), faults(page, about));
  }

  private List<FieldFault> faults(ReviewPage page, Contribution about) {
    return about.state() == State.APPROVED || about.state() == State.WITHDRAWN
        ? List.of()
        : about.content().faults(room.basis(page));
  }

  private static List<Contribution> others(ReviewPage page, Contribution about) {
    String subject = about.proposal().subject();
    return subject.isEmpty()
        ? List.of()
        : page.contributions().waitingAbout(subject).stream()
            .filter(each -> each.id() != about.id())
            .toList();
  }

  /** Nobody sees another's drafts, whatever the query says. */
  public List<Contribution> find(Actor actor, ContributionQuery query) {
    actor.require(Role.CONTRIBUTOR);
    return room.reading(page -> page.contributions().find(query.forViewer(actor)));
  }

  /** A picture that the actor sent, or that belongs to a contribution which they can see. */
  public Optional<Upload> upload(Actor actor, String id) {
    actor.require(Role.CONTRIBUTOR);
    int accountId = actor.requireAccount().id();
    return room.reading(page -> page.uploads().visible(id, accountId));
  }

  /** What the machine makes of something before it is submitted; empty while it has faults. */
  public Optional<Examination> examine(Actor actor, Content content) {
    actor.require(Role.CONTRIBUTOR);
    return room.reading(
        page -> {
          Basis basis = room.basis(page);
          return content.faults(basis).isEmpty()
              ? Optional.of(new Examiner(basis.lexicon()).examine(content, basis))
              : Optional.empty();
        });
  }
}
