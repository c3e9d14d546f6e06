package org.hedgerow.review;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/** Judges many proposals at once, and submits those that are good, in one transaction. */
public final class SubmitMany {
  /** As many as fit into one transaction without making others wait. */
  public static final int MAX = 2_000;

  private final ReviewContext context;
  private final Write write;
  private final Submit submit;

  SubmitMany(ReviewContext context) {
    this.context = context;
    this.write = new Write(context);
    this.submit = new Submit(context);
  }

  /**
   * What came of one.
   *
   * @param errors because of which it can't be submitted
   * @param examination what the machine makes of it; empty where there are errors
   * @param waiting others that wait for a decision about the same
   * @param submitted where it was asked for and there are no errors
   * @param repeated whether its author had submitted the same before; nothing more was kept then
   */
  public record Result(
      Content content,
      List<FieldError> errors,
      Optional<Examination> examination,
      List<Contribution> waiting,
      Optional<Contribution> submitted,
      boolean repeated) {
    static Result refused(Content content, List<FieldError> errors) {
      return new Result(content, errors, Optional.empty(), List.of(), Optional.empty(), false);
    }

    static Result good(Content content, Examination examination, List<Contribution> waiting) {
      return new Result(
          content, List.of(), Optional.of(examination), waiting, Optional.empty(), false);
    }

    Result submitted(Contribution contribution) {
      return new Result(content, errors, examination, waiting, Optional.of(contribution), false);
    }

    Result repeating(Contribution earlier) {
      return new Result(content, errors, examination, waiting, Optional.of(earlier), true);
    }
  }

  /** Judges only; nothing is kept. */
  public List<Result> judge(Actor actor, List<Content> contents) {
    return run(actor, contents, false);
  }

  /** Submits those without errors. */
  public List<Result> execute(Actor actor, List<Content> contents) {
    return run(actor, contents, true);
  }

  private List<Result> run(Actor actor, List<Content> contents, boolean submitGood) {
    actor.require(Role.CONTRIBUTOR);
    Person author = Person.of(actor.requireAccount());
    requireNotTooMany(contents);
    return context.inTransaction(
        unit -> {
          unit.contributions().lockAuthor(author.accountId());
          PendingDuplicates earlier = PendingDuplicates.of(unit, author, contents);
          List<Result> results = judged(unit, contents, earlier);
          return submitGood
              ? results.stream().map(each -> submitted(unit, actor, author, each, earlier)).toList()
              : results;
        });
  }

  private static void requireNotTooMany(List<Content> contents) {
    if (contents.size() > MAX) {
      throw new RejectedException(
          List.of(new FieldError("", "At most %,d at once.".formatted(MAX))));
    }
  }

  private List<Result> judged(
      ReviewUnitOfWork unit, List<Content> contents, PendingDuplicates earlier) {
    BankSnapshot snapshot = context.snapshot(unit);
    Examiner examiner = new Examiner(snapshot.lexicon());
    Map<String, List<Contribution>> waiting = unit.contributions().waitingAbout(subjects(contents));
    Set<String> seen = new HashSet<>();
    List<Result> results = new ArrayList<>();
    for (Content content : contents) {
      String subject = content.proposal().subject();
      List<FieldError> errors = new ArrayList<>(content.errors(snapshot));
      if (!seen.add(content.proposal().kind() + " " + subject)) {
        errors.add(new FieldError(content.proposal().subjectField(), "It stands here twice."));
      }
      results.add(
          errors.isEmpty()
              ? Result.good(
                  content,
                  examiner.examine(content, snapshot),
                  without(earlier.saying(content), waiting.getOrDefault(subject, List.of())))
              : Result.refused(content, errors));
    }
    return results;
  }

  private static List<Contribution> without(
      Optional<Contribution> own, List<Contribution> waiting) {
    return waiting.stream().filter(each -> !own.equals(Optional.of(each))).toList();
  }

  private static Set<String> subjects(List<Content> contents) {
    return contents.stream().map(each -> each.proposal().subject()).collect(toSet());
  }

  private Result submitted(
      ReviewUnitOfWork unit, Actor actor, Person author, Result judged, PendingDuplicates earlier) {
    if (judged.examination().isEmpty()) {
      return judged;
    }
    Optional<Contribution> own = earlier.saying(judged.content());
    if (own.filter(each -> each.state() == ContributionState.SUBMITTED).isPresent()) {
      return judged.repeating(own.get());
    }
    Contribution draft = own.orElseGet(() -> write.write(unit, actor, judged.content(), author));
    return judged.submitted(submit.submit(unit, actor, draft, judged.examination().get()));
  }
}
