package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.Contribution;
import org.hedgerow.review.ContributionQuery;
import org.hedgerow.review.ContributionState;
import org.hedgerow.review.Decision;
import org.hedgerow.review.DecisionKind;

/** Makes the page of what somebody has contributed. */
record OwnContributionsMaker(ReviewPageSupport desk) {
  private static final int MAX = 200;

  OwnContributionsPage page(Context context) {
    Actor actor = desk.actor(context);
    String about = parameter(context, "about");
    String state = parameter(context, "state");
    boolean everybodys = parameter(context, "author").equals("all");
    List<Contribution> found =
        desk.review().reviews().find(actor, query(actor, about, state, everybodys));
    return new OwnContributionsPage(
        desk.token(context),
        Confirmation.of(parameter(context, "done")),
        in(found, ContributionState.RETURNED)
            .filter(each -> isOwn(each, actor))
            .map(each -> returned(each, actor))
            .toList(),
        rows(in(found, ContributionState.DRAFT), actor),
        rows(
            found.stream()
                .filter(
                    each ->
                        each.state() == ContributionState.SUBMITTED
                            || (each.state() == ContributionState.RETURNED && !isOwn(each, actor))),
            actor),
        rows(
            found.stream()
                .filter(
                    each ->
                        Set.of(
                                ContributionState.APPROVED,
                                ContributionState.DECLINED,
                                ContributionState.WITHDRAWN)
                            .contains(each.state())),
            actor),
        everybodys,
        filters(state),
        about);
  }

  private static String parameter(Context context, String name) {
    return Optional.ofNullable(context.queryParam(name)).orElse("").strip();
  }

  private static ContributionQuery query(
      Actor actor, String about, String state, boolean everybodys) {
    int id = actor.requireAccount().id();
    ContributionQuery query = ContributionQuery.seenBy(id, MAX);
    query = everybodys ? query : query.by(id);
    query = about.isEmpty() ? query : query.about(about);
    Optional<ContributionState> wanted = ContributionState.labelled(state);
    return wanted.isPresent() ? query.in(Set.of(wanted.get())) : query;
  }

  private static boolean isOwn(Contribution contribution, Actor actor) {
    return actor.is(contribution.author().accountId());
  }

  private static Stream<Contribution> in(List<Contribution> found, ContributionState state) {
    return found.stream().filter(each -> each.state() == state);
  }

  private static List<ContributionRow> rows(Stream<Contribution> found, Actor actor) {
    return found.map(each -> ContributionRow.of(each, isOwn(each, actor))).toList();
  }

  private OwnContributionsPage.ReturnedRow returned(Contribution contribution, Actor actor) {
    Optional<Decision> last =
        desk.review().reviews().open(actor, contribution.id()).decisions().stream()
            .filter(each -> each.kind() == DecisionKind.RETURN)
            .reduce((first, second) -> second);
    return new OwnContributionsPage.ReturnedRow(
        ContributionRow.of(contribution, true),
        last.map(Decision::comment).orElse(""),
        last.map(each -> each.by().name()).orElse(""));
  }

  private static List<Option> filters(String chosen) {
    return List.of(
        Option.of("", "All", chosen),
        Option.of("draft", "Drafts", chosen),
        Option.of("returned", "Returned", chosen),
        Option.of("submitted", "Waiting", chosen),
        Option.of("approved", "In the bank", chosen),
        Option.of("declined", "Not taken", chosen));
  }
}
