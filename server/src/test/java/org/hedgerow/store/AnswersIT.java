package org.hedgerow.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.accounts.SettableClock;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.IdempotencyStore;
import org.hedgerow.operations.IdempotencyStore.Kept;
import org.hedgerow.operations.IdempotencyStore.Outcome;
import org.hedgerow.operations.IdempotencyStore.Request;
import org.hedgerow.operations.Role;
import org.hedgerow.store.accounts.EmptyAccounts;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Answers by idempotency key in a real database, as two servers share it. */
@Timeout(60)
class AnswersIT {
  private static final String KEY = "a".repeat(64);
  private static final String ASKED = "b".repeat(64);

  private static TestDatabase database;

  private final SettableClock clock = new SettableClock();
  private AccountRepository book;
  private IdempotencyStore one;
  private IdempotencyStore other;
  private int account;

  @BeforeAll
  static void create() {
    database = TestDatabase.open();
  }

  @AfterAll
  static void drop() {
    database.close();
  }

  @BeforeEach
  void open() {
    book = EmptyAccounts.in(database);
    account = add("ada");
    one = new JdbiIdempotencyStore(database.bank(), clock);
    other = new JdbiIdempotencyStore(database.bank(), clock);
  }

  private int add(String name) {
    return book.inTransaction(
        page ->
            page.accounts()
                .add(name, name, Role.CONTRIBUTOR, "$argon2id$none", clock.instant())
                .orElseThrow()
                .id());
  }

  private static Kept answer(String body) {
    return new Kept(201, Optional.of("/somewhere"), Optional.empty(), "application/json", body);
  }

  private Request request() {
    return new Request(account, KEY, ASKED);
  }

  private static Kept never() {
    throw new AssertionError("It is done again.");
  }

  private List<String> names() {
    return database
        .bank()
        .jdbi()
        .withHandle(
            handle ->
                handle
                    .createQuery("select name from accounts order by name")
                    .mapTo(String.class)
                    .list());
  }

  @Test
  void anotherServerGivesTheSameAnswer() {
    assertThat(one.once(request(), () -> answer("first"))).isEqualTo(new Outcome.Done());
    Kept kept = ((Outcome.Repeated) other.once(request(), AnswersIT::never)).answer();
    assertThat(kept).isEqualTo(answer("first"));
    assertThat(other.once(new Request(account, KEY, "c".repeat(64)), AnswersIT::never))
        .isEqualTo(new Outcome.Reused());
  }

  @Test
  void afterADayTheKeyIsForgotten() {
    one.once(request(), () -> answer("first"));
    clock.goOn(Duration.ofHours(24).plusSeconds(1));
    assertThat(one.once(request(), () -> answer("second"))).isEqualTo(new Outcome.Done());
  }

  /** A server that is killed before the end undoes as much as one that fails. */
  @Test
  void whatFailsLeavesNeitherTheKeyNorWhatWasDone() {
    assertThatThrownBy(
            () ->
                one.once(
                    request(),
                    () -> {
                      add("bela");
                      throw new IllegalStateException("in the middle");
                    }))
        .isInstanceOf(IllegalStateException.class);
    assertThat(names()).containsExactly("ada");
    one.once(
        request(),
        () -> {
          add("cora");
          return answer("done");
        });
    assertThat(names()).containsExactly("ada", "cora");
  }

  /** As when many decisions are sent at once, of which one isn't possible. */
  @Test
  void aStepThatFailsIsUndoneAlone() {
    one.once(
        request(),
        () -> {
          add("bela");
          assertThatThrownBy(
                  () ->
                      book.inTransaction(
                          page -> {
                            page.accounts().changeDisplayName(account, "Changed");
                            throw new IllegalStateException("not this one");
                          }))
              .isInstanceOf(IllegalStateException.class);
          return answer("partly");
        });
    assertThat(names()).containsExactly("ada", "bela");
    assertThat(book.<String>inTransaction(page -> displayName(page.accounts().find(account))))
        .isEqualTo("ada");
  }

  private static String displayName(Optional<Account> account) {
    return account.orElseThrow().displayName();
  }

  @Test
  void editionsAreAnnouncedOnceTheyAreCommitted() {
    List<Integer> seen = new ArrayList<>();
    one.once(
        request(),
        () -> {
          add("bela");
          database.bank().afterwards(() -> seen.add(names().size()));
          assertThat(seen).isEmpty();
          return answer("published");
        });
    assertThat(seen).containsExactly(2);
  }

  @Test
  void whileItIsBeingDoneNobodyWaitsForIt() throws Exception {
    CountDownLatch started = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    CompletableFuture<Outcome> first =
        CompletableFuture.supplyAsync(
            () ->
                one.once(
                    request(),
                    () -> {
                      started.countDown();
                      await(end);
                      return answer("slow");
                    }));
    started.await();
    assertThat(other.once(request(), AnswersIT::never)).isEqualTo(new Outcome.Running());
    end.countDown();
    assertThat(first.get(10, TimeUnit.SECONDS)).isEqualTo(new Outcome.Done());
    assertThat(other.once(request(), AnswersIT::never)).isInstanceOf(Outcome.Repeated.class);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
