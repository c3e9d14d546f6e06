package org.hedgerow.review;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.hedgerow.operations.RejectedException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;

/** People who do something at the same moment. */
public abstract class RaceContract extends ReviewContract {
  private final ExecutorService people = Executors.newFixedThreadPool(16);

  @AfterEach
  void goHome() throws InterruptedException {
    people.shutdown();
    assertThat(people.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
  }

  /** What came of each: a contribution, or an exception. */
  private List<Object> atOnce(List<Callable<Contribution>> attempts) throws Exception {
    CyclicBarrier start = new CyclicBarrier(attempts.size());
    List<Future<Contribution>> futures = new ArrayList<>();
    for (Callable<Contribution> attempt : attempts) {
      futures.add(
          people.submit(
              () -> {
                start.await();
                return attempt.call();
              }));
    }
    List<Object> results = new ArrayList<>();
    for (Future<Contribution> each : futures) {
      results.add(result(each));
    }
    return results;
  }

  private static Object result(Future<Contribution> future) throws InterruptedException {
    try {
      return future.get();
    } catch (ExecutionException problem) {
      return requireNonNull(problem.getCause());
    }
  }

  private static <T> T only(List<Object> results, Class<T> kind) {
    List<T> found = results.stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).as("%s", results).hasSize(1);
    return found.get(0);
  }

  @RepeatedTest(5)
  void ofTwoReviewersOneWinsAndTheOtherSeesIt() throws Exception {
    Contribution seen = submitted(nora, newWord());
    List<Object> results = atOnce(List.of(() -> approve(mei, seen), () -> approve(otto, seen)));
    assertThat(only(results, Contribution.class).state()).isEqualTo(ContributionState.APPROVED);
    assertThat(only(results, ConflictException.class).present()).isEqualTo(present(seen));
    assertThat(published).containsExactly(2);
    assertThat(records.newestEdition()).isEqualTo(2);
    assertThat(decisions(seen)).hasSize(1);
  }

  @RepeatedTest(5)
  void anApprovalAndARefusalAtOnceAreOne() throws Exception {
    Contribution seen = submitted(nora, newWord());
    List<Object> results =
        atOnce(
            List.of(
                () -> approve(mei, seen),
                () ->
                    services
                        .decide()
                        .execute(
                            otto,
                            DecisionRequest.of(
                                DecisionKind.DECLINE, seen.id(), 1, "Not needed."))));
    Contribution winner = only(results, Contribution.class);
    assertThat(only(results, ConflictException.class).present().state()).isEqualTo(winner.state());
    assertThat(word(seen.proposal().subject()).isPresent())
        .isEqualTo(winner.state() == ContributionState.APPROVED);
  }

  @RepeatedTest(5)
  void anApprovalAndItsAuthorsSecondThoughtsAreOne() throws Exception {
    Contribution seen = submitted(nora, newWord());
    List<Object> results =
        atOnce(
            List.of(
                () -> approve(mei, seen), () -> services.takeBack().execute(nora, seen.id(), 1)));
    Contribution winner = only(results, Contribution.class);
    only(results, RuntimeException.class);
    assertThat(present(seen).state()).isEqualTo(winner.state());
    assertThat(records.newestEdition())
        .isEqualTo(winner.state() == ContributionState.APPROVED ? 2 : 1);
  }

  @RepeatedTest(5)
  void theSameWordFromTwoComesIntoTheBankOnce() throws Exception {
    NewWord same = newWord();
    Contribution first = submitted(nora, same);
    Contribution second = submitted(ivan, same);
    List<Object> results = atOnce(List.of(() -> approve(mei, first), () -> approve(otto, second)));
    only(results, Contribution.class);
    assertThat(only(results, RejectedException.class).errors().get(0).field())
        .isEqualTo("spelling");
    assertThat(records.newestEdition()).isEqualTo(2);
  }

  @Test
  void twoVotesAtOncePublishOnce() throws Exception {
    votes = 2;
    Contribution seen = submitted(nora, newWord());
    List<Object> results = atOnce(List.of(() -> approve(mei, seen), () -> approve(otto, seen)));
    assertThat(results).allMatch(Contribution.class::isInstance);
    assertThat(present(seen).state()).isEqualTo(ContributionState.APPROVED);
    assertThat(published).containsExactly(2);
  }

  @Test
  void manyChangesOfOneWordAreAllKept() throws Exception {
    List<Callable<Contribution>> attempts = new ArrayList<>();
    for (String vowel : List.of("ɪ", "i", "ɛ", "æ", "ɑ", "ʌ", "ʊ", "u")) {
      NewPronunciation said =
          new NewPronunciation("moon", Proposals.saying("en-US", "m " + vowel + " n ə"), false);
      Contribution seen = submitted(nora, said);
      attempts.add(() -> approve(attempts.size() % 2 == 0 ? mei : otto, seen));
    }
    int before = word("moon").orElseThrow().pronunciations().size();
    assertThat(atOnce(attempts)).allMatch(Contribution.class::isInstance);
    assertThat(word("moon").orElseThrow().pronunciations()).hasSize(before + 8);
    assertThat(records.newestEdition()).isEqualTo(9);
    assertThat(published).containsExactlyInAnyOrder(2, 3, 4, 5, 6, 7, 8, 9);
  }
}
