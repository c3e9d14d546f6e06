package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where two reviewers must agree. */
public abstract class VotingContract extends ReviewContract {
  private Actor rosa;

  @BeforeEach
  void askForTwo() {
    votes = 2;
    rosa = Actor.of(records.account("rosa", "Rosa", Role.REVIEWER));
  }

  @Test
  void theSecondApprovalPublishes() {
    Contribution seen = submitted(nora, newWord());
    assertThat(approve(mei, seen).state()).isEqualTo(ContributionState.SUBMITTED);
    assertThat(word(seen.proposal().subject())).isEmpty();
    assertThat(published).isEmpty();
    assertThat(approve(otto, seen).state()).isEqualTo(ContributionState.APPROVED);
    assertThat(word(seen.proposal().subject())).isPresent();
    assertThat(published).containsExactly(2);
    assertThat(decisions(seen))
        .extracting(each -> each.by().name() + " " + each.edition().isPresent())
        .containsExactly("美 false", "نور true");
  }

  @Test
  void nobodyVotesTwice() {
    Contribution seen = submitted(nora, newWord());
    approve(mei, seen);
    refused(ConflictException.class, () -> approve(mei, seen));
    assertThat(decisions(seen)).hasSize(1);
  }

  @Test
  void aNewRevisionVoidsVotes() {
    Contribution seen = submitted(nora, newWord());
    approve(mei, seen);
    services.takeBack().execute(nora, seen.id(), 1);
    services.revise().execute(nora, seen.id(), 1, Content.of(newWord()));
    Contribution again = services.submit().execute(nora, seen.id(), 2);
    refused(StaleRevisionException.class, () -> approve(otto, seen));
    assertThat(approve(otto, again).state()).isEqualTo(ContributionState.SUBMITTED);
    assertThat(approve(mei, again).state()).isEqualTo(ContributionState.APPROVED);
  }

  @Test
  void anotherDecisionVoidsVotes() {
    Contribution seen = submitted(nora, newWord());
    approve(mei, seen);
    services
        .decide()
        .execute(otto, DecisionRequest.of(DecisionKind.DECLINE, seen.id(), 1, "Not needed."));
    services.decide().execute(otto, DecisionRequest.of(DecisionKind.REOPEN, seen.id(), 1, ""));
    assertThat(approve(otto, seen).state()).isEqualTo(ContributionState.SUBMITTED);
    assertThat(approve(rosa, seen).state()).isEqualTo(ContributionState.APPROVED);
  }

  @Test
  void nobodyVotesForWhatCouldNotBePublished() {
    NewWord same = newWord();
    Contribution first = submitted(nora, same);
    Contribution second = submitted(ivan, same);
    approve(mei, first);
    approve(otto, first);
    refusedAt(() -> approve(mei, second), "spelling");
  }

  @Test
  void anAuthorWhoReviewsDoesNotVoteOnTheirOwn() {
    Contribution own = submitted(mei, newWord());
    refused(OwnershipException.class, () -> approve(mei, own));
    approve(otto, own);
    refused(OwnershipException.class, () -> approve(mei, own));
    assertThat(approve(rosa, own).state()).isEqualTo(ContributionState.APPROVED);
  }

  @Test
  void whoVotedMayPublishWhenTheCentreAsksForOneAgain() {
    Contribution seen = submitted(nora, newWord());
    approve(mei, seen);
    votes = 1;
    assertThat(approve(mei, seen).state()).isEqualTo(ContributionState.APPROVED);
  }
}
