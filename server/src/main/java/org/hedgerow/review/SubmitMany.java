package org.hedgerow.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.Role;

/** Judges many proposals at once, and submits those that are good, in one transaction. */
public final class SubmitMany {
  /** As many as fit into one transaction without making others wait. */
  public static final int MOST = 2_000;

  private final Workroom room;
  private final Write write;
  private final Submit submit;

  SubmitMany(Workroom room) {
    this.room = room;
    this.write = new Write(room);
    this.submit = new Submit(room);
  }

  /**
   * What came of one.
   *
   * @param faults because of which it can't be submitted
   * @param examination what the machine makes of it; empty where there are faults
   * @param waiting others that wait for a decision about the same
   * @param submitted where it was asked for and there are no faults
   */
  public record Result(
      Content content,
      List<FieldFault> faults,
      Optional<Examination> examination,
      List<Contribution> waiting,
      Optional<Contribution> submitted) {}

  /** Judges only; nothing is kept. */
  public List<Result> judge(Actor actor, List<Content> contents) {
    return run(actor, contents, false);
  }

  /** Submits those without faults. */
  public List<Result> execute(Actor actor, List<Content> contents) {
    return run(actor, contents, true);
  }

  private List<Result> run(Actor actor, List<Content> contents, boolean submitGood) {
    actor.require(Role.CONTRIBUTOR);
    Person author = Person.of(actor.requireAccount());
    return room.inTransaction(
        page -> {
          Basis basis = room.basis(page);
          Examiner examiner = new Examiner(basis.lexicon());
          Set<String> seen = new HashSet<>();
          List<Result> results = new ArrayList<>();
          for (Content content : contents) {
            List<FieldFault> faults = new ArrayList<>(content.proposal().faults(basis));
            if (!seen.add(content.proposal().kind() + " " + content.proposal().subject())) {
              faults.add(new FieldFault("spelling", "It stands here twice."));
            }
            results.add(result(page, actor, content, faults, author, basis, examiner, submitGood));
          }
          return results;
        });
  }

  private Result result(
      ReviewPage page,
      Actor actor,
      Content content,
      List<FieldFault> faults,
      Person author,
      Basis basis,
      Examiner examiner,
      boolean submitGood) {
    if (!faults.isEmpty()) {
      return new Result(content, faults, Optional.empty(), List.of(), Optional.empty());
    }
    List<Contribution> waiting = page.contributions().waitingAbout(content.proposal().subject());
    Optional<Contribution> submitted =
        submitGood
            ? Optional.of(submit.submit(page, actor, write.write(page, actor, content, author)))
            : Optional.empty();
    return new Result(
        content, List.of(), Optional.of(examiner.examine(content, basis)), waiting, submitted);
  }
}
