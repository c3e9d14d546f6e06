package org.hedgerow.store.review;

import java.time.Instant;
import java.util.List;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Role;
import org.hedgerow.review.ReviewRecords;
import org.hedgerow.review.ReviewRepository;
import org.hedgerow.seed.SeededLexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.TestDatabase;
import org.hedgerow.store.accounts.JdbiAccountRepository;
import org.hedgerow.store.editions.BankFiller;
import org.hedgerow.store.editions.EditionReader;
import org.hedgerow.store.editions.SeededEdition;

/** Review kept in a real database. */
final class DatabaseReviewRecords implements ReviewRecords, AutoCloseable {
  private final TestDatabase database = TestDatabase.open();

  DatabaseReviewRecords() {
    new BankFiller(database.bank())
        .fill(() -> SeededEdition.of(WORDS.toArray(String[]::new)), "The first.", () -> {});
  }

  BankDatabase bank() {
    return database.bank();
  }

  /** As it was at first; the owner of the tables may do so, and a careless program may not. */
  DatabaseReviewRecords emptied() {
    execute("alter table audit disable trigger audit_stays");
    execute("alter table decisions disable trigger decisions_stay");
    execute("truncate audit, decisions");
    execute("alter table audit enable trigger audit_stays");
    execute("alter table decisions enable trigger decisions_stay");
    execute(
        "delete from pronunciations where word_id in (select id from words where since_edition > 1)");
    execute("delete from words where since_edition > 1");
    execute("update words set until_edition = null");
    execute("delete from rule_sets where since_edition > 1");
    execute("delete from sequences where since_edition > 1");
    execute("delete from sight_words where since_edition > 1");
    execute("update rule_sets set until_edition = null");
    execute("update sequences set until_edition = null");
    execute("update sight_words set until_edition = null");
    execute("delete from pictures");
    execute("delete from sentences");
    execute("delete from uploads");
    execute("update editions set contribution_id = null");
    execute("delete from contributions");
    execute("delete from editions where number > 1");
    execute("delete from idempotency_keys");
    execute("delete from accounts");
    return this;
  }

  void execute(String statement) {
    bank().jdbi().useHandle(handle -> handle.execute(statement));
  }

  @Override
  public ReviewRepository book() {
    return new JdbiReviewRepository(bank(), SeededLexicon.get().accents());
  }

  @Override
  public Account account(String name, String displayName, Role role) {
    return new JdbiAccountRepository(bank())
        .inTransaction(
            page ->
                page.accounts()
                    .add(name, displayName, role, "$argon2id$none", Instant.EPOCH)
                    .orElseThrow());
  }

  @Override
  public int newestEdition() {
    return new EditionReader(bank()).newestNumber();
  }

  @Override
  public List<String> audit() {
    return strings("select actor || ' ' || action from audit order by id");
  }

  @Override
  public String auditInFull() {
    return String.join("\n", strings("select audit::text from audit order by id"));
  }

  List<String> strings(String query) {
    return bank().jdbi().withHandle(handle -> handle.createQuery(query).mapTo(String.class).list());
  }

  @Override
  public void close() {
    database.close();
  }
}
