package org.hedgerow.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.editions.EditionReader;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Many transactions done as one. */
class SharedTransactionIT {
  private TestDatabase database;

  @BeforeEach
  void open() {
    database = TestDatabase.open();
  }

  @AfterEach
  void drop() {
    database.close();
  }

  private static void add(BankDatabase bank, int number) {
    bank.jdbi()
        .useTransaction(
            handle -> handle.execute("insert into editions values (?, now(), 'x')", number));
  }

  private int count() {
    return database.one("select count(*) from editions", Integer.class);
  }

  @Test
  void nothingIsSeenBeforeTheEndAndThenAllOfIt() {
    int seenWithin =
        database
            .bank()
            .atOnce(
                whole -> {
                  add(whole, 1);
                  add(whole, 2);
                  assertThat(count()).isZero();
                  return whole
                      .jdbi()
                      .withHandle(
                          handle ->
                              handle
                                  .createQuery("select count(*) from editions")
                                  .mapTo(Integer.class)
                                  .one());
                },
                () -> {});
    assertThat(seenWithin).isEqualTo(2);
    assertThat(count()).isEqualTo(2);
  }

  @Test
  void nothingIsKeptOfWhatFails() {
    assertThatThrownBy(
            () ->
                database
                    .bank()
                    .atOnce(
                        whole -> {
                          add(whole, 1);
                          throw new IllegalStateException("cut short");
                        },
                        () -> {}))
        .hasMessage("cut short");
    assertThat(count()).isZero();
  }

  @Test
  void aStepThatFailsTakesNoOtherAlong() {
    database
        .bank()
        .atOnce(
            whole -> {
              add(whole, 1);
              assertThatThrownBy(() -> add(whole, 1))
                  .isInstanceOf(UnableToExecuteStatementException.class);
              add(whole, 2);
              return 0;
            },
            () -> {});
    assertThat(count()).isEqualTo(2);
  }

  @Test
  void whoeverComesSecondSaysThatTheyWaitAndSeesWhatTheFirstDid() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch waiting = new CountDownLatch(1);
    CompletableFuture<Integer> first =
        CompletableFuture.supplyAsync(
            () ->
                database
                    .bank()
                    .atOnce(
                        whole -> {
                          begun.countDown();
                          add(whole, 1);
                          return isReached(waiting) ? 1 : 0;
                        },
                        () -> {}));
    assertThat(isReached(begun)).isTrue();
    int seen =
        database
            .bank()
            .atOnce(whole -> new EditionReader(whole).newestNumber(), waiting::countDown);
    assertThat(first.get()).isEqualTo(1);
    assertThat(seen).isEqualTo(1);
  }

  private static boolean isReached(CountDownLatch latch) {
    try {
      return latch.await(30, TimeUnit.SECONDS);
    } catch (InterruptedException interruption) {
      throw new IllegalStateException(interruption);
    }
  }
}
