package org.hedgerow.store.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.AccountRepository;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.AccountsContract;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.accounts.PlainHash;
import org.hedgerow.accounts.Secret;
import org.hedgerow.accounts.SettableClock;
import org.hedgerow.accounts.SignInOrigin;
import org.hedgerow.accounts.SignInResult.SignedIn;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.hedgerow.store.TestDatabase;
import org.jdbi.v3.core.JdbiException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Accounts kept in a real database, and the record of what is done to them. */
class AccountsIT extends AccountsContract {
  private static final String PASSWORD = "wild cherry and hazel";

  private static TestDatabase database;

  @BeforeAll
  static void create() {
    database = TestDatabase.open();
  }

  @AfterAll
  static void drop() {
    database.close();
  }

  @Override
  protected AccountRepository book() {
    return EmptyAccounts.in(database);
  }

  private static AccountServices services() {
    return AccountServices.of(
        new JdbiAccountRepository(database.bank()), new PlainHash(), new SettableClock());
  }

  @Test
  void recordsEveryChangeInOrder() {
    AccountServices services = services();
    Secret link = services.invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    Actor ada =
        Actor.of(services.invitations().accept(link, new NewAccount("ada", "Ada", PASSWORD)));
    int id = ada.requireAccount().id();
    services.people().rename(ada, id, "Ada B.");
    services.tokens().make(ada, "a script", Role.REVIEWER, 30);
    assertThat(
            strings(
                "select actor || ' ' || action || ' ' || (before->>'displayName' is not null)"
                    + " from audit order by id"))
        .containsExactly(
            "the command line link.made false",
            "ada account.made false",
            "ada account.renamed true",
            "ada token.made false");
    assertThat(strings("select before || after from audit where action = 'account.renamed'"))
        .containsExactly("{\"displayName\": \"Ada B.\"}");
  }

  @Test
  void recordsNothingOfWhatWasRefused() {
    AccountServices services = services();
    Secret link = services.invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    Actor ada =
        Actor.of(services.invitations().accept(link, new NewAccount("ada", "Ada", PASSWORD)));
    List<String> before = strings("select action from audit order by id");
    assertThatThrownBy(() -> services.people().changeActive(ada, ada.requireAccount().id(), false))
        .isInstanceOf(RejectedException.class);
    assertThat(strings("select action from audit order by id")).isEqualTo(before);
    assertThat(strings("select name from accounts where active")).containsExactly("ada");
  }

  @Test
  void keepsNoSecret() {
    AccountServices services = services();
    Secret link = services.invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    Actor ada =
        Actor.of(services.invitations().accept(link, new NewAccount("ada", "Ada", PASSWORD)));
    Secret token = services.tokens().make(ada, "a script", Role.REVIEWER, 30);
    Secret session =
        ((SignedIn)
                services
                    .signIn()
                    .signIn("ada", PASSWORD, SignInOrigin.of("192.0.2.7", "a browser")))
            .session();
    String everything =
        String.join(
            "\n",
            strings(
                "select t::text from links t union all select t::text from sessions t"
                    + " union all select t::text from api_tokens t"
                    + " union all select t::text from audit t"));
    assertThat(everything)
        .contains(link.hash(), token.hash(), session.hash())
        .doesNotContain(link.text(), token.text(), session.text(), PASSWORD);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "update audit set actor = 'somebody else'",
        "update audit set after = '{}' where false",
        "delete from audit",
        "truncate audit",
        "truncate accounts cascade"
      })
  void theRecordStaysAsItIs(String statement) {
    services().invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    assertThatThrownBy(() -> execute(statement))
        .isInstanceOf(JdbiException.class)
        .hasMessageContaining("only ever added to");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "insert into accounts (name, display_name, role, password_hash, since)"
            + " values ('eve', 'Eve', 'visitor', '$argon2id$x', now())",
        "insert into accounts (name, display_name, role, password_hash, since)"
            + " values ('eve', 'Eve', 'reviewer', 'in the open', now())",
        "insert into accounts (name, display_name, role, password_hash, since)"
            + " values ('e v', 'Eve', 'reviewer', '$argon2id$x', now())",
        "insert into links (secret_hash, purpose, role, made_by, made_at, expires_at)"
            + " values ('in the open', 'invitation', 'reviewer', 'x', now(), now() + '1 day')",
        "insert into links (secret_hash, purpose, role, made_by, made_at, expires_at)"
            + " values (repeat('a', 64), 'new_password', 'reviewer', 'x', now(), now() + '1 day')",
        "insert into links (secret_hash, purpose, role, made_by, made_at, expires_at)"
            + " values (repeat('a', 64), 'invitation', 'reviewer', 'x', now(), now())",
        "insert into audit (at, actor, action, subject, before, after)"
            + " values (now(), 'x', 'nonsense', 'x', '{}', '{}')",
        "insert into audit (at, actor, action, subject, before, after)"
            + " values (now(), 'x', 'a.b', 'x', '[]', '{}')"
      })
  void refuses(String statement) {
    assertThatThrownBy(() -> execute(statement))
        .isInstanceOf(JdbiException.class)
        .hasMessageContaining("constraint");
  }

  @Test
  void aLongNameOfABrowserIsCutOff() {
    AccountServices services = services();
    Secret link = services.invitations().make(Actor.OPERATOR, Role.ADMINISTRATOR, 7);
    Actor ada =
        Actor.of(services.invitations().accept(link, new NewAccount("ada", "Ada", PASSWORD)));
    services.signIn().signIn("ada", PASSWORD, SignInOrigin.of("192.0.2.7", "x".repeat(1000)));
    assertThat(services.sessions().endAll(ada, ada.requireAccount().id(), Optional.empty()))
        .isEqualTo(1);
  }

  private static void execute(String statement) {
    database.bank().jdbi().useHandle(handle -> handle.execute(statement));
  }

  private static List<String> strings(String query) {
    return database
        .bank()
        .jdbi()
        .withHandle(handle -> handle.createQuery(query).mapTo(String.class).list());
  }
}
