package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.reading.FindingCode;
import org.junit.jupiter.api.Test;

/** What approvals do to the bank, what undoes them, and when they are not possible. */
public abstract class ApprovingContract extends ReviewContract {

  private Contribution retag(String spelling, int level) {
    return approve(mei, submitted(nora, new Retag(spelling, Proposals.picturable(level))));
  }

  private String picturable(String spelling) {
    return word(spelling).flatMap(each -> each.tag(Tag.PICTURABLE)).map(Tag::value).orElse("");
  }

  private Contribution undo(Contribution approved) {
    return services
        .decide()
        .execute(
            otto,
            DecisionRequest.of(
                DecisionKind.WITHDRAW, approved.id(), approved.revision(), "A mistake."));
  }

  @Test
  void aWordThatCameIntoTheBankMeanwhileIsNotApproved() {
    NewWord same = newWord();
    Contribution first = submitted(nora, same);
    Contribution second = submitted(ivan, same);
    approve(mei, first);
    refusedAt(() -> approve(mei, second), "spelling");
    assertThat(present(second)).isEqualTo(second);
    assertThat(decisions(second)).isEmpty();
    assertThat(published).containsExactly(2);
    assertThat(services.reviews().open(mei, second.id()).errors()).hasSize(1);
  }

  @Test
  void aWordThatLeftTheBankMeanwhileIsNotChanged() {
    Contribution tags = submitted(nora, new Retag("ship", Proposals.picturable(1)));
    approve(mei, submitted(ivan, new Withdrawal("ship", "", "It sinks.")));
    refusedAt(() -> approve(mei, tags), "spelling");
    assertThat(word("ship")).isEmpty();
  }

  @Test
  void anUndoneChangeGivesWayToWhatStoodBefore() {
    retag("cat", 1);
    Contribution second = retag("cat", 2);
    assertThat(picturable("cat")).isEqualTo("2");
    undo(second);
    assertThat(picturable("cat")).isEqualTo("1");
    assertThat(word("cat").orElseThrow().since()).isEqualTo(4);
  }

  @Test
  void whatWasChangedSinceIsUndoneInTurn() {
    Contribution first = retag("cat", 1);
    Contribution second = retag("cat", 2);
    ConflictException conflict = refused(ConflictException.class, () -> undo(first));
    assertThat(conflict.present().state()).isEqualTo(ContributionState.APPROVED);
    assertThat(picturable("cat")).isEqualTo("2");
    undo(second);
    undo(first);
    assertThat(records.newestEdition()).isEqualTo(5);
    assertThat(present(first).state()).isEqualTo(ContributionState.WITHDRAWN);
  }

  @Test
  void aWordThatWasWithdrawnSinceIsNotUndone() {
    NewWord proposal = newWord();
    Contribution made = approve(mei, submitted(nora, proposal));
    approve(mei, submitted(ivan, new Withdrawal(proposal.spelling(), "", "No word.")));
    refused(ConflictException.class, () -> undo(made));
    assertThat(word(proposal.spelling())).isEmpty();
  }

  @Test
  void aWithdrawnWordThatCameAgainIsNotUndone() {
    Contribution gone = approve(mei, submitted(nora, new Withdrawal("cat", "", "It scratches.")));
    NewWord again =
        new NewWord("cat", List.of(Proposals.saying("en-US", "k æ t")), WordLabels.NONE);
    approve(mei, submitted(ivan, again));
    refused(ConflictException.class, () -> undo(gone));
    assertThat(word("cat").orElseThrow().pronunciations()).hasSize(1);
  }

  @Test
  void aFindingThatIsOverruledGoesAndItsReasonStays() {
    NewWord plain = newWord();
    NewWord rude = new NewWord(plain.spelling(), plain.pronunciations(), Proposals.rude());
    Contribution seen = submitted(nora, rude);
    assertThat(seen.remarks()).extracting(ContributionFinding::code).contains("not-for-children");
    services
        .decide()
        .execute(
            mei,
            DecisionRequest.overrule(
                seen.id(), 1, "not-for-children", "It is the name of a cake."));
    assertThat(present(seen).state()).isEqualTo(ContributionState.SUBMITTED);
    assertThat(records.newestEdition()).isEqualTo(1);
    approve(mei, seen);
    Word word = word(rude.spelling()).orElseThrow();
    assertThat(word.is(Tag.NOT_FOR_CHILDREN)).isFalse();
    assertThat(word.tag(Tag.OVERRULED + FindingCode.NOT_FOR_CHILDREN.label()))
        .contains(new Tag("overruled-not-for-children", "yes", "It is the name of a cake."));
  }

  @Test
  void whatIsNotOverruledStays() {
    NewWord plain = newWord();
    NewWord rude = new NewWord(plain.spelling(), plain.pronunciations(), Proposals.rude());
    approve(mei, submitted(nora, rude));
    assertThat(word(rude.spelling()).flatMap(each -> each.tag(Tag.NOT_FOR_CHILDREN)))
        .map(Tag::value)
        .isEqualTo(Optional.of("it is rude"));
  }

  @Test
  void onlyFindingsThatAreThereAndRestOnAGuessAreOverruled() {
    Contribution seen = submitted(nora, newWord());
    refusedAt(
        () ->
            services
                .decide()
                .execute(mei, DecisionRequest.overrule(seen.id(), 1, "name", "It is no name.")),
        "finding");
    Content wanted = new Content(Proposals.word(50), "ee 1", "");
    Contribution draft = services.write().execute(nora, wanted);
    Contribution other = services.submit().execute(nora, draft.id(), 1);
    assertThat(other.remarks()).extracting(ContributionFinding::code).contains("no-target");
    refusedAt(
        () ->
            services
                .decide()
                .execute(mei, DecisionRequest.overrule(other.id(), 1, "no-target", "I hear it.")),
        "finding");
  }

  @Test
  void theSamePronunciationInTwoNotationsStandsOnlyOnce() {
    NewWord twice =
        new NewWord(
            "doat",
            List.of(
                Proposals.saying("en-US", "d oʊ t"),
                Proposals.saying("en-US", "D OW T"),
                Proposals.saying("en-US", "nonsense"),
                Proposals.saying("xx", "d")),
            WordLabels.NONE);
    Contribution draft = draft(nora, twice);
    refusedAt(
        () -> services.submit().execute(nora, draft.id(), 1),
        "pronunciations[1]",
        "pronunciations[2].sounds",
        "pronunciations[3].accent");
  }
}
