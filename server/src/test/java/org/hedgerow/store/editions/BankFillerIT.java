package org.hedgerow.store.editions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.hedgerow.lexicon.Word;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A bank is filled once, and wholly or not at all. */
class BankFillerIT {
  private static final FirstEdition FIRST =
      SeededEdition.of("boat", "wool", "live", "stripe", "eye");

  private TestDatabase database;
  private BankFiller filler;

  @BeforeEach
  void open() {
    database = TestDatabase.open();
    filler = new BankFiller(database.bank());
  }

  @AfterEach
  void drop() {
    database.close();
  }

  private boolean fill(FirstEdition edition) {
    return filler.fill(() -> edition, "A test.", () -> {});
  }

  private List<String> words() {
    return new EditionReader(database.bank()).first().words().stream().map(Word::spelling).toList();
  }

  @Test
  void fillsAnEmptyBankOnce() {
    assertThat(filler.isEmpty()).isTrue();
    assertThat(fill(FIRST)).isTrue();
    assertThat(filler.isEmpty()).isFalse();
    assertThat(fill(SeededEdition.of("cat"))).isFalse();
    assertThat(words()).containsExactly("boat", "wool", "live", "stripe", "eye");
  }

  /** Else it would plan queries for empty tables until it gets round to counting. */
  @Test
  void letsTheDatabaseCountWhatItHolds() {
    fill(FIRST);
    String counted = "select reltuples from pg_class where oid = 'words'::regclass";
    assertThat(database.one(counted, Integer.class)).isEqualTo(5);
  }

  /** As in the demo, whose week of history lies before the bank was really filled. */
  @Test
  void canHaveBeenPublishedEarlierAndNotLater() {
    fill(FIRST);
    Instant early = Instant.parse("2026-01-05T08:00:00Z");
    filler.firstPublishedBy(early);
    assertThat(published()).isEqualTo(early);
    filler.firstPublishedBy(early.plusSeconds(60));
    assertThat(published()).isEqualTo(early);
  }

  private Instant published() {
    return database.one("select published_at from editions where number = 1", Instant.class);
  }

  @Test
  void leavesNothingBehindWhenItIsInterrupted() {
    assertThatThrownBy(
            () ->
                filler.fill(
                    () -> FIRST,
                    "A test.",
                    () -> {
                      throw new IllegalStateException("pulled plug");
                    }))
        .hasMessage("pulled plug");
    assertThat(rows("editions", "accents", "correspondences", "words")).containsOnly(0);
    assertThat(fill(FIRST)).isTrue();
    assertThat(words()).hasSize(5);
  }

  @Test
  void saysWhyTheDatabaseDoesNotTakeIt() {
    FirstEdition twice = SeededEdition.of("boat", "boat");
    assertThatThrownBy(() -> fill(twice))
        .isInstanceOf(DatabaseUnavailableException.class)
        .hasMessageContaining("stays empty")
        .hasMessageContaining("duplicate key")
        .message()
        .hasLineCount(1);
    assertThat(filler.isEmpty()).isTrue();
  }

  @Test
  void letsOnlyOneOfTwoFillIt() throws Exception {
    CountDownLatch firstIsAtWork = new CountDownLatch(1);
    CountDownLatch secondSaysThatItWaits = new CountDownLatch(1);
    CompletableFuture<Boolean> first =
        CompletableFuture.supplyAsync(
            () ->
                filler.fill(
                    () -> {
                      firstIsAtWork.countDown();
                      await(secondSaysThatItWaits);
                      return FIRST;
                    },
                    "The first.",
                    () -> {}));
    await(firstIsAtWork);
    CompletableFuture<Boolean> second =
        CompletableFuture.supplyAsync(
            () ->
                new BankFiller(database.bank(), secondSaysThatItWaits::countDown)
                    .fill(() -> SeededEdition.of("cat"), "The second.", () -> {}));
    assertThat(first.get(30, TimeUnit.SECONDS)).isTrue();
    assertThat(second.get(30, TimeUnit.SECONDS)).isFalse();
    assertThat(words()).hasSize(5);
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
  }

  private List<Integer> rows(String... tables) {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                Stream.of(tables)
                    .map(
                        table ->
                            handle
                                .createQuery("select count(*) from " + table)
                                .mapTo(Integer.class)
                                .one())
                    .toList());
  }
}
