package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.NotFoundException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What authors do with their own contributions, and what others see of them. */
public abstract class ContributingContract extends ReviewContract {
  private List<Contribution> seenBy(Actor actor) {
    return services.reviews().find(actor, ContributionQuery.seenBy(1, 100));
  }

  @Test
  void aDraftMayLackAnything() {
    Contribution draft = draft(nora, new NewWord("", List.of(), WordLabels.NONE));
    assertThat(draft.state()).isEqualTo(ContributionState.DRAFT);
    assertThat(draft.revision()).isEqualTo(1);
    refusedAt(() -> services.submit().execute(nora, draft.id(), 1), "spelling", "pronunciations");
  }

  @Test
  void nobodySeesAnothersDraft() {
    Contribution draft = draft(ivan, newWord());
    assertThat(seenBy(ivan)).extracting(Contribution::id).containsExactly(draft.id());
    for (Actor other : List.of(nora, mei, otto)) {
      assertThat(seenBy(other)).isEmpty();
      refused(NotFoundException.class, () -> services.reviews().open(other, draft.id()));
      refused(NotFoundException.class, () -> approve(mei, draft));
      refused(
          NotFoundException.class,
          () -> services.revise().execute(nora, draft.id(), 1, draft.content()));
    }
  }

  @Test
  void theQueryOfOneDoesNotShowAnothersDraft() {
    draft(ivan, newWord());
    int ivansId = ivan.account().orElseThrow().id();
    assertThat(services.reviews().find(nora, ContributionQuery.seenBy(ivansId, 10))).isEmpty();
  }

  @Test
  void visitorsContributeNothing() {
    Content content = Content.of(newWord());
    refused(NotAllowedException.class, () -> services.write().execute(Actor.VISITOR, content));
    refused(
        NotAllowedException.class,
        () -> services.submitMany().judge(Actor.VISITOR, List.of(content)));
    refused(NotAllowedException.class, () -> services.reviews().open(Actor.VISITOR, 1));
    refused(NotAllowedException.class, () -> services.write().execute(Actor.OPERATOR, content));
  }

  @Test
  void onlyTheAuthorChangesWhatIsSubmittedOrReturned() {
    Contribution submitted = submitted(nora, newWord());
    for (Actor other : List.of(ivan, mei)) {
      refused(
          OwnershipException.class,
          () -> services.takeBack().execute(other, submitted.id(), submitted.revision()));
    }
    services
        .decide()
        .execute(
            mei,
            DecisionRequest.of(
                DecisionKind.RETURN, submitted.id(), 1, "Another spelling, please."));
    refused(
        OwnershipException.class,
        () -> services.revise().execute(ivan, submitted.id(), 1, Content.of(newWord())));
  }

  @Test
  void aStaleEditSeesWhatThereIsNow() {
    Contribution draft = draft(nora, newWord());
    Content later = Content.of(newWord());
    services.revise().execute(nora, draft.id(), 1, later);
    StaleRevisionException stale =
        refused(
            StaleRevisionException.class,
            () -> services.revise().execute(nora, draft.id(), 1, Content.of(newWord())));
    assertThat(stale.present().revision()).isEqualTo(2);
    assertThat(stale.present().content()).isEqualTo(later);
    refused(StaleRevisionException.class, () -> services.submit().execute(nora, draft.id(), 1));
    refused(
        StaleRevisionException.class,
        () -> {
          services.discard().execute(nora, draft.id(), 1);
          return 0;
        });
  }

  /** To the last digit of the time, for whoever wrote it is shown it without reading it again. */
  @Test
  void whatAVerbGivesBackIsWhatIsKept() {
    clock.goOn(Duration.ofNanos(123_456_789));
    Contribution draft = draft(nora, newWord());
    assertThat(present(draft)).isEqualTo(draft);
    clock.goOn(Duration.ofSeconds(1));
    Contribution revised = services.revise().execute(nora, draft.id(), 1, Content.of(newWord()));
    assertThat(present(draft)).isEqualTo(revised);
    Contribution submitted = services.submit().execute(nora, draft.id(), revised.revision());
    assertThat(present(draft)).isEqualTo(submitted);
    assertThat(services.reviews().about(submitted))
        .isEqualTo(services.reviews().open(nora, draft.id()));
    Contribution approved = approve(mei, submitted);
    assertThat(present(draft)).isEqualTo(approved);
    assertThat(services.reviews().about(approved))
        .isEqualTo(services.reviews().open(nora, draft.id()));
  }

  @Test
  void savingTheSameAgainIsNoNewRevision() {
    Contribution draft = draft(nora, newWord());
    assertThat(services.revise().execute(nora, draft.id(), 1, draft.content()).revision())
        .isEqualTo(1);
  }

  @Test
  void whatIsTakenBackIsADraftAgain() {
    Contribution submitted = submitted(nora, newWord());
    Contribution back = services.takeBack().execute(nora, submitted.id(), 1);
    assertThat(back.state()).isEqualTo(ContributionState.DRAFT);
    assertThat(seenBy(mei)).isEmpty();
    services.discard().execute(nora, back.id(), 1);
    refused(NotFoundException.class, () -> services.reviews().open(nora, back.id()));
    assertThat(records.audit())
        .containsExactly(
            "nora contribution.begun",
            "nora contribution.submitted",
            "nora contribution.taken-back",
            "nora contribution.discarded");
  }

  @Test
  void whatReviewersDecidedOnIsNotDiscarded() {
    Contribution seen = submitted(nora, Proposals.word(0, Proposals.rude()));
    services
        .decide()
        .execute(mei, DecisionRequest.overrule(seen.id(), 1, "not-for-children", "It isn’t rude."));
    services.takeBack().execute(nora, seen.id(), 1);
    refused(
        ConflictException.class,
        () -> {
          services.discard().execute(nora, seen.id(), 1);
          return 0;
        });
  }

  @Test
  void whatWasSubmittedStaysInTheRecord() {
    NewWord first = newWord();
    Contribution seen = submitted(nora, first);
    services
        .decide()
        .execute(mei, DecisionRequest.of(DecisionKind.RETURN, seen.id(), 1, "Another, please."));
    services.revise().execute(nora, seen.id(), 1, Content.of(newWord()));
    assertThat(records.auditInFull()).contains(first.spelling()).contains("Another, please.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "שלום, זו מילה טובה",
        "كلمة جيدة \u200F(جدًا)",
        "여기 좋은 단어가 있어요",
        "ένα 😀 𝒪𝒶 <script>alert('x')</script> \\ \" ' ; --",
        "two\nlines\tand a tab"
      })
  void whatPeopleSayIsKeptInAnyScript(String said) {
    Contribution draft = services.write().execute(nora, new Content(newWord(), "oa 1", said));
    services.submit().execute(nora, draft.id(), 1);
    services.decide().execute(mei, DecisionRequest.of(DecisionKind.RETURN, draft.id(), 1, said));
    Reviews.Dossier dossier = services.reviews().open(ivan, draft.id());
    assertThat(dossier.contribution().content().note()).isEqualTo(said);
    assertThat(dossier.contribution().author().name()).isEqualTo("Нора Ильина");
    assertThat(dossier.decisions()).extracting(Decision::comment).containsExactly(said);
    assertThat(dossier.decisions().get(0).by().name()).isEqualTo("美");
  }

  @Test
  void signsThatNobodyCanReadAreLeftOut() {
    String odd = "a\u0000b\u001Bc\uD800d\r\n";
    Contribution draft = services.write().execute(nora, new Content(newWord(), "oa 1", odd));
    assertThat(present(draft).content().note()).isEqualTo("abcd");
    services.submit().execute(nora, draft.id(), 1);
    services.decide().execute(mei, DecisionRequest.of(DecisionKind.DECLINE, draft.id(), 1, odd));
    assertThat(decisions(draft).get(0).comment()).isEqualTo("abcd");
    assertThat(services.reviews().find(nora, ContributionQuery.seenBy(1, 10).about("x\u0000")))
        .isEmpty();
  }

  @Test
  void aLongDraftIsKeptAndALongNoteIsNotSubmitted() {
    String much = "x".repeat(100_000);
    Contribution draft = draft(nora, new NewWord(much, List.of(), WordLabels.NONE));
    assertThat(present(draft).proposal().subject()).isEqualTo(much);
    Contribution noted = services.write().execute(nora, new Content(newWord(), "zz 9", much));
    refusedAt(() -> services.submit().execute(nora, noted.id(), 1), "wantedFor", "note");
  }

  @Test
  void findsByStateAndAuthorAndSubjectAndValue() {
    Contribution one = submitted(nora, newWord());
    Contribution two = submitted(ivan, newWord());
    Contribution draft = draft(nora, newWord());
    ContributionQuery mine = ContributionQuery.seenBy(0, 10).by(one.author().accountId());
    assertThat(services.reviews().find(nora, mine)).containsExactly(present(draft), present(one));
    assertThat(
            services
                .reviews()
                .find(mei, mine.in(Set.of(ContributionState.SUBMITTED, ContributionState.DRAFT))))
        .containsExactly(present(one));
    assertThat(
            services
                .reviews()
                .find(mei, ContributionQuery.seenBy(0, 10).about(two.proposal().subject())))
        .containsExactly(present(two));
    assertThat(one.serves()).contains("oa 1");
    assertThat(services.reviews().find(mei, serving("oa 1"))).hasSize(2);
    assertThat(services.reviews().find(mei, serving("oa 2"))).isEmpty();
  }

  private static ContributionQuery serving(String value) {
    ContributionQuery all = ContributionQuery.seenBy(0, 10);
    return new ContributionQuery(
        all.states(),
        all.kind(),
        all.authorId(),
        Optional.of(value),
        all.about(),
        all.before(),
        all.viewerId(),
        all.limit());
  }
}
