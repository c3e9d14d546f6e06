package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.NotFoundException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Who decides, on what, and which verb is possible in which state. */
public abstract class DecisionsContract extends ReviewContract {
  private static final String WHY = "Because.";

  /** What can be done with a contribution, in the order of the columns of the table below. */
  private enum Verb {
    REVISE,
    SUBMIT,
    TAKE_BACK,
    DISCARD,
    APPROVE,
    RETURN,
    DECLINE,
    OVERRULE,
    WITHDRAW,
    REOPEN
  }

  private Contribution inState(ContributionState state) {
    Contribution draft = draft(nora, rudeWord());
    int id = draft.id();
    if (state == ContributionState.DRAFT) {
      return draft;
    }
    Contribution sent = services.submit().execute(nora, id, 1);
    return switch (state) {
      case DRAFT, SUBMITTED -> sent;
      case APPROVED -> approve(mei, sent);
      case RETURNED ->
          services.decide().execute(mei, DecisionRequest.of(DecisionKind.RETURN, id, 1, WHY));
      case DECLINED ->
          services.decide().execute(mei, DecisionRequest.of(DecisionKind.DECLINE, id, 1, WHY));
      case WITHDRAWN -> {
        approve(mei, sent);
        yield services.decide().execute(mei, DecisionRequest.of(DecisionKind.WITHDRAW, id, 1, WHY));
      }
    };
  }

  private NewWord rudeWord() {
    NewWord plain = newWord();
    return new NewWord(plain.spelling(), plain.pronunciations(), Proposals.rude());
  }

  private Object attempt(Verb verb, Contribution on) {
    int id = on.id();
    return switch (verb) {
      case REVISE -> services.revise().execute(nora, id, 1, Content.of(newWord()));
      case SUBMIT -> services.submit().execute(nora, id, 1);
      case TAKE_BACK -> services.takeBack().execute(nora, id, 1);
      case DISCARD -> {
        services.discard().execute(nora, id, 1);
        yield id;
      }
      case APPROVE -> approve(otto, on);
      case RETURN ->
          services.decide().execute(otto, DecisionRequest.of(DecisionKind.RETURN, id, 1, WHY));
      case DECLINE ->
          services.decide().execute(otto, DecisionRequest.of(DecisionKind.DECLINE, id, 1, WHY));
      case OVERRULE ->
          services.decide().execute(otto, DecisionRequest.overrule(id, 1, "not-for-children", WHY));
      case WITHDRAW ->
          services.decide().execute(otto, DecisionRequest.of(DecisionKind.WITHDRAW, id, 1, WHY));
      case REOPEN ->
          services.decide().execute(otto, DecisionRequest.of(DecisionKind.REOPEN, id, 1, WHY));
    };
  }

  /** What is possible in each state, written down from the design and not from the code. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          DRAFT     | REVISE SUBMIT DISCARD
          SUBMITTED | TAKE_BACK APPROVE RETURN DECLINE OVERRULE
          APPROVED  | WITHDRAW
          RETURNED  | REVISE SUBMIT REOPEN
          DECLINED  | REOPEN
          WITHDRAWN |
          """)
  void onlyTheseVerbsArePossible(ContributionState state, String verbs) {
    Set<Verb> possible =
        verbs == null
            ? EnumSet.noneOf(Verb.class)
            : Arrays.stream(verbs.split(" ")).map(Verb::valueOf).collect(Collectors.toSet());
    for (Verb verb : Verb.values()) {
      Contribution on = inState(state);
      if (possible.contains(verb)) {
        int recorded = records.audit().size();
        attempt(verb, on);
        assertThat(records.audit()).as("%s %s", verb, state).hasSize(recorded + 1);
      } else {
        refused(RuntimeException.class, () -> attempt(verb, on));
        assertThatThrownBy(() -> attempt(verb, on))
            .as("%s %s", verb, state)
            .isInstanceOf(
                state == ContributionState.DRAFT && verb != Verb.TAKE_BACK
                    ? NotFoundException.class
                    : ConflictException.class);
        assertThat(present(on).state()).isEqualTo(state);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = Verb.class,
      names = {"APPROVE", "RETURN", "DECLINE", "OVERRULE", "WITHDRAW", "REOPEN"})
  void onlyReviewersDecideAndNobodyOnTheirOwn(Verb verb) {
    ContributionState from =
        switch (verb) {
          case WITHDRAW -> ContributionState.APPROVED;
          case REOPEN -> ContributionState.DECLINED;
          case REVISE, SUBMIT, TAKE_BACK, DISCARD, APPROVE, RETURN, DECLINE, OVERRULE ->
              ContributionState.SUBMITTED;
        };
    Contribution on = inState(from);
    Actor decider = otto;
    for (Actor other : List.of(Actor.VISITOR, ivan, nora)) {
      otto = other;
      refused(NotAllowedException.class, () -> attempt(verb, on));
    }
    otto = Actor.OPERATOR;
    refused(NotAllowedException.class, () -> attempt(verb, on));
    Actor contributor = nora;
    nora = decider;
    Contribution own = inState(from);
    otto = decider;
    refused(OwnershipException.class, () -> attempt(verb, own));
    nora = contributor;
  }

  @Test
  void reasonsAreGivenWhereTheyAreNeeded() {
    Contribution seen = submitted(nora, rudeWord());
    int id = seen.id();
    refusedAt(
        () -> services.decide().execute(mei, DecisionRequest.of(DecisionKind.RETURN, id, 1, " ")),
        "comment");
    refusedAt(
        () ->
            services
                .decide()
                .execute(mei, DecisionRequest.of(DecisionKind.DECLINE, id, 1, "\u0000")),
        "comment");
    refusedAt(
        () ->
            services.decide().execute(mei, DecisionRequest.overrule(id, 1, "not-for-children", "")),
        "comment");
    refusedAt(
        () ->
            services
                .decide()
                .execute(mei, DecisionRequest.of(DecisionKind.DECLINE, id, 1, "x".repeat(2001))),
        "comment");
    approve(mei, seen);
    refusedAt(
        () -> services.decide().execute(mei, DecisionRequest.of(DecisionKind.WITHDRAW, id, 1, "")),
        "comment");
  }

  @Test
  void aReviewerWhoSawAnEarlierRevisionIsTold() {
    Contribution seen = submitted(nora, newWord());
    services.takeBack().execute(nora, seen.id(), 1);
    services.revise().execute(nora, seen.id(), 1, Content.of(newWord()));
    Contribution again = services.submit().execute(nora, seen.id(), 2);
    StaleRevisionException stale = refused(StaleRevisionException.class, () -> approve(mei, seen));
    assertThat(stale.present()).isEqualTo(present(again));
    assertThat(stale.present().revision()).isEqualTo(2);
  }

  @Test
  void whatItsAuthorIsChangingIsNotReopened() {
    Contribution seen = submitted(nora, newWord());
    services.decide().execute(mei, DecisionRequest.of(DecisionKind.RETURN, seen.id(), 1, WHY));
    services
        .revise()
        .execute(nora, seen.id(), 1, Content.of(new NewWord("", List.of(), WordLabels.NONE)));
    refused(
        ConflictException.class,
        () ->
            services
                .decide()
                .execute(mei, DecisionRequest.of(DecisionKind.REOPEN, seen.id(), 2, "")));
  }

  @Test
  void everyDecisionIsRecorded() {
    Contribution seen = submitted(nora, rudeWord());
    int id = seen.id();
    services.decide().execute(mei, DecisionRequest.of(DecisionKind.DECLINE, id, 1, "Not now."));
    services.decide().execute(otto, DecisionRequest.of(DecisionKind.REOPEN, id, 1, ""));
    services
        .decide()
        .execute(mei, DecisionRequest.overrule(id, 1, "not-for-children", "Not rude at all."));
    approve(mei, seen);
    services
        .decide()
        .execute(otto, DecisionRequest.of(DecisionKind.WITHDRAW, id, 1, "Rude after all."));
    assertThat(records.audit())
        .containsExactly(
            "nora contribution.begun",
            "nora contribution.submitted",
            "mei contribution.declined",
            "otto contribution.reopened",
            "mei contribution.overruled",
            "mei contribution.approved",
            "otto contribution.withdrawn");
    assertThat(decisions(seen))
        .extracting(each -> each.kind().label() + " " + each.edition().isPresent())
        .containsExactly(
            "decline false", "reopen false", "overrule false", "approve true", "withdraw true");
    assertThat(published).hasSize(2);
  }
}
