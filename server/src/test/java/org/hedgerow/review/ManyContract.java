package org.hedgerow.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.hedgerow.operations.FieldError;
import org.junit.jupiter.api.Test;

/** Many proposals at once. */
public abstract class ManyContract extends ReviewContract {
  private static final int TABLE = 1_000;

  private static List<Content> words(int count) {
    return IntStream.range(0, count).mapToObj(Proposals::word).map(Content::of).toList();
  }

  @Test
  void theGoodAreSubmittedAndTheOthersComeBack() {
    Contribution waiting = submitted(ivan, Proposals.word(2));
    List<Content> contents =
        List.of(
            Content.of(Proposals.word(1)),
            Content.of(new NewWord("ship", Proposals.word(1).pronunciations(), WordLabels.NONE)),
            Content.of(Proposals.word(1)),
            new Content(Proposals.word(2), "oa 1", "שלום"),
            Content.of(new NewWord("Ñandú", List.of(), WordLabels.NONE)));
    List<SubmitMany.Result> results = services.submitMany().execute(nora, contents);
    assertThat(results).extracting(SubmitMany.Result::content).isEqualTo(contents);
    assertThat(results)
        .extracting(each -> each.errors().stream().map(FieldError::field).toList())
        .containsExactly(
            List.of(),
            List.of("spelling"),
            List.of("spelling"),
            List.of(),
            List.of("spelling", "pronunciations"));
    assertThat(results)
        .extracting(each -> each.submitted().isPresent())
        .containsExactly(true, false, false, true, false);
    assertThat(results.get(3).waiting()).containsExactly(waiting);
    assertThat(results.get(3).submitted().map(Contribution::state))
        .isEqualTo(Optional.of(ContributionState.SUBMITTED));
    assertThat(services.queue().places(mei, ContributionQuery.seenBy(0, 10))).hasSize(3);
  }

  @Test
  void judgingKeepsNothing() {
    List<SubmitMany.Result> results = services.submitMany().judge(nora, words(3));
    assertThat(results).allMatch(each -> each.submitted().isEmpty());
    assertThat(results).allMatch(each -> each.examination().isPresent());
    assertThat(records.audit()).isEmpty();
    assertThat(services.reviews().find(nora, ContributionQuery.seenBy(0, 10))).isEmpty();
  }

  /** By the name that the field at error has in its kind of proposal. */
  @Test
  void whatStandsThereTwiceIsNamed() {
    NewSentence sentence = new NewSentence("A toad on a road.", "oa", 1, List.of("en-US"));
    Withdrawal withdrawal = new Withdrawal("ship", "", "a test");
    assertThat(faultOfTheSecond(sentence)).isEqualTo("text");
    assertThat(faultOfTheSecond(withdrawal)).isEqualTo("spelling");
    assertThat(faultOfTheSecond(newWord())).isEqualTo("spelling");
  }

  private String faultOfTheSecond(Proposal proposal) {
    Content content = Content.of(proposal);
    List<SubmitMany.Result> results = services.submitMany().judge(nora, List.of(content, content));
    assertThat(results.get(0).errors()).isEmpty();
    assertThat(results.get(1).errors()).hasSize(1);
    return results.get(1).errors().get(0).field();
  }

  @Test
  void tooManyAreRefused() {
    List<Content> contents = words(1_001);
    List<Content> twice =
        IntStream.range(0, 2_001).mapToObj(number -> contents.get(number % 1_001)).toList();
    refusedAt(() -> services.submitMany().execute(nora, twice), "");
  }

  @Test
  void aTableIsJudgedAndSubmittedSoon() {
    assertThat(time("judged", () -> services.submitMany().judge(nora, words(TABLE))))
        .isLessThan(Duration.ofSeconds(10));
    assertThat(time("submitted", () -> services.submitMany().execute(nora, words(TABLE))))
        .isLessThan(Duration.ofSeconds(20));
    assertThat(time("queued", () -> services.queue().places(mei, ContributionQuery.seenBy(0, 50))))
        .isLessThan(Duration.ofSeconds(10));
    assertThat(records.audit()).hasSize(2 * TABLE);
  }

  /** Prints it, too, since the limits leave room for slow machines. */
  private static Duration time(String what, Supplier<List<?>> work) {
    Instant start = Instant.now();
    assertThat(work.get()).isNotEmpty();
    Duration taken = Duration.between(start, Instant.now());
    System.out.printf("%d words %s in %d ms%n", TABLE, what, taken.toMillis());
    return taken;
  }

  @Test
  void theQueueShowsTheMostWantedOfAllThatWait() {
    services.submitMany().execute(nora, words(30));
    List<Queue.Place> all = services.queue().places(mei, ContributionQuery.seenBy(0, 100));
    assertThat(all).hasSize(30).isSortedAccordingTo(Comparator.comparing(Queue.Place::rank));
    assertThat(services.queue().places(mei, ContributionQuery.seenBy(0, 5)))
        .isEqualTo(all.subList(0, 5));
  }

  @Test
  void onlyWhatStillWaitsIsShownAtThePlacesOfTheQueue() {
    services.submitMany().execute(nora, words(5));
    List<Queue.Place> places = services.queue().places(mei, ContributionQuery.seenBy(0, 100));
    Queue.Waiting first = services.queue().at(mei, places).get(0);
    services
        .decide()
        .execute(
            mei, DecisionRequest.of(DecisionKind.DECLINE, first.contribution().id(), 1, "No."));
    assertThat(services.queue().at(mei, places))
        .extracting(Queue.Waiting::place)
        .isEqualTo(places.subList(1, 5));
  }
}
