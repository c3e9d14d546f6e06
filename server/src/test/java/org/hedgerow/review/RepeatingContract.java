package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hedgerow.operations.Actor;
import org.junit.jupiter.api.Test;

/** What is sent twice is kept once, and everything that is kept can be decided on. */
public abstract class RepeatingContract extends ReviewContract {
  private SubmitMany.Result submit(Actor author, Proposal proposal) {
    return services.submitMany().execute(author, List.of(Content.of(proposal))).get(0);
  }

  private static Optional<Integer> id(SubmitMany.Result result) {
    return result.submitted().map(Contribution::id);
  }

  @Test
  void theSameSubmissionOfTheSamePersonIsKeptOnce() {
    NewWord word = newWord();
    SubmitMany.Result first = submit(nora, word);
    List<String> audit = records.audit();
    SubmitMany.Result again = submit(nora, word);
    assertThat(first.repeated()).isFalse();
    assertThat(again.repeated()).isTrue();
    assertThat(again.submitted()).isEqualTo(first.submitted());
    assertThat(again.waiting()).as("one's own isn't another's").isEmpty();
    assertThat(records.audit()).isEqualTo(audit);
    assertThat(submit(ivan, word).repeated()).as("somebody else's").isFalse();
    Content noted = new Content(word, "", "Heard at home.");
    assertThat(services.submitMany().execute(nora, List.of(noted)).get(0).repeated()).isFalse();
  }

  @Test
  void aDraftThatSaysTheSameIsSubmittedRatherThanAnother() {
    NewWord word = newWord();
    Write.Kept draft = services.write().once(nora, Content.of(word));
    assertThat(draft.repeated()).isFalse();
    assertThat(services.write().once(nora, Content.of(word)))
        .isEqualTo(new Write.Kept(draft.contribution(), true));
    SubmitMany.Result submitted = submit(nora, word);
    assertThat(id(submitted)).contains(draft.contribution().id());
    assertThat(services.write().once(nora, Content.of(word)).contribution().state())
        .isEqualTo(ContributionState.SUBMITTED);
  }

  @Test
  void whatWasDecidedCanBeSentAgain() {
    NewWord word = newWord();
    Contribution first = submitted(nora, word);
    services
        .decide()
        .execute(
            mei,
            DecisionRequest.of(
                DecisionKind.DECLINE, first.id(), first.revision(), "Nobody says that."));
    assertThat(id(submit(nora, word))).isPresent().isNotEqualTo(Optional.of(first.id()));
  }

  @Test
  void ofManyAtOnceOneIsKept() {
    NewWord word = newWord();
    List<Integer> ids =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> submit(i % 2 == 0 ? nora : ivan, word))
            .flatMap(result -> id(result).stream())
            .toList();
    assertThat(ids).hasSize(8);
    assertThat(ids.stream().distinct()).as("one of each person").hasSize(2);
  }

  @Test
  void afterOneIsApprovedTheSameOfAnotherCanBeReturnedAndDeclined() {
    NewWord word = newWord();
    Contribution first = submitted(nora, word);
    Contribution second = submitted(ivan, word);
    Contribution third = submitted(otto, word);
    approve(mei, first);
    refusedAt(() -> approve(mei, second), "spelling");
    Contribution declined =
        services
            .decide()
            .execute(
                mei,
                DecisionRequest.of(
                    DecisionKind.DECLINE, second.id(), second.revision(), "It is there already."));
    Contribution returned =
        services
            .decide()
            .execute(
                mei,
                DecisionRequest.of(
                    DecisionKind.RETURN, third.id(), third.revision(), "It is there already."));
    assertThat(Stream.of(declined, returned).map(Contribution::state))
        .containsExactly(ContributionState.DECLINED, ContributionState.RETURNED);
  }
}
