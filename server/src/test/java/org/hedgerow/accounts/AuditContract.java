package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.KeysetPage;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What holds of reading the record of what was done, wherever it is kept. */
public abstract class AuditContract {
  private static final String PASSWORD = "wild cherry and hazel";

  private final SettableClock clock = new SettableClock();
  private AccountServices services;
  private Actor ada;
  private Actor rosa;
  private Instant noon;

  /** An empty one for each test. */
  protected abstract AccountRepository book();

  /** Eight things are done: two links and two accounts made, a token, two new names, a role. */
  @BeforeEach
  void doSomething() {
    services = AccountServices.of(book(), new PlainHash(), clock);
    ada = person("ada", Role.ADMINISTRATOR);
    rosa = person("rosa", Role.REVIEWER);
    services.tokens().make(rosa, "a script", Role.CONTRIBUTOR, 30);
    clock.goOn(Duration.ofHours(4));
    noon = clock.instant();
    services.people().rename(rosa, id(rosa), "روزا");
    clock.goOn(Duration.ofHours(1));
    services.people().rename(ada, id(ada), "Ada Byron");
    services.people().changeRole(ada, id(rosa), Role.CONTRIBUTOR);
  }

  private Actor person(String name, Role role) {
    Secret link = services.invitations().make(Actor.OPERATOR, role, 7);
    return Actor.of(
        services.invitations().accept(link, new NewAccount(name, "Miss " + name, PASSWORD)));
  }

  private static int id(Actor actor) {
    return actor.requireAccount().id();
  }

  private List<String> found(AuditQuery query) {
    return services.audit().find(ada, query).items().stream()
        .map(record -> record.actor() + " " + record.action())
        .toList();
  }

  private static AuditQuery query(String actor, String action, String subject) {
    return new AuditQuery(
        Optional.of(actor).filter(text -> !text.isEmpty()),
        Optional.of(action).filter(text -> !text.isEmpty()),
        Optional.of(subject).filter(text -> !text.isEmpty()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        50);
  }

  private static AuditQuery between(Optional<Instant> from, Optional<Instant> to) {
    return new AuditQuery(
        Optional.empty(), Optional.empty(), Optional.empty(), from, to, Optional.empty(), 50);
  }

  @Test
  void findsTheNewestFirst() {
    assertThat(found(AuditQuery.newest(50)))
        .containsExactly(
            "ada account.role",
            "ada account.renamed",
            "rosa account.renamed",
            "rosa token.made",
            "rosa account.made",
            "the command line link.made",
            "ada account.made",
            "the command line link.made");
  }

  @Test
  void tellsWhatWasBeforeAndAfter() {
    AuditRecord record =
        services.audit().find(ada, query("rosa", "account.renamed", "")).items().get(0);
    assertThat(record.before()).isEqualTo(Map.of("displayName", "Miss rosa"));
    assertThat(record.after()).isEqualTo(Map.of("displayName", "روزا"));
    assertThat(record.accountId()).contains(id(rosa));
    assertThat(record.subject()).isEqualTo("account " + id(rosa));
    assertThat(record.at()).isEqualTo(noon);
  }

  @Test
  void findsByActorActionAndSubject() {
    assertThat(found(query("rosa", "", ""))).hasSize(3).allMatch(each -> each.startsWith("rosa "));
    assertThat(found(query("the command line", "", ""))).hasSize(2);
    assertThat(found(query("", "account.", ""))).hasSize(5);
    assertThat(found(query("", "account.renamed", ""))).hasSize(2);
    assertThat(found(query("", "acc_unt", ""))).as("no pattern").isEmpty();
    assertThat(found(query("", "", "account " + id(rosa))))
        .containsExactly("ada account.role", "rosa account.renamed", "rosa account.made");
    assertThat(found(query("ada", "account.", "account " + id(rosa))))
        .containsExactly("ada account.role");
    assertThat(found(query("nobody' or '1'='1", "", ""))).isEmpty();
  }

  @Test
  void findsByTimeFromOneMomentUntilBeforeAnother() {
    assertThat(found(between(Optional.of(noon), Optional.empty()))).hasSize(3);
    assertThat(found(between(Optional.empty(), Optional.of(noon)))).hasSize(5);
    assertThat(found(between(Optional.of(noon), Optional.of(noon.plusSeconds(1)))))
        .containsExactly("rosa account.renamed");
  }

  @Test
  void goesOnWhereItStopped() {
    KeysetPage<AuditRecord> first = services.audit().find(ada, AuditQuery.newest(3));
    assertThat(first.items()).hasSize(3);
    KeysetPage<AuditRecord> second = services.audit().find(ada, below(first.next(), 3));
    KeysetPage<AuditRecord> third = services.audit().find(ada, below(second.next(), 3));
    assertThat(third.items()).hasSize(2);
    assertThat(third.next()).isEmpty();
    assertThat(services.audit().find(ada, below(second.next(), 2)).next())
        .as("nothing is left over")
        .isEmpty();
    assertThat(
            java.util.stream.Stream.of(first, second, third)
                .flatMap(slice -> slice.items().stream())
                .map(AuditRecord::id))
        .doesNotHaveDuplicates()
        .hasSize(8);
  }

  private static AuditQuery below(Optional<String> next, int limit) {
    assertThat(next).isPresent();
    return new AuditQuery(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        next.map(Long::valueOf),
        limit);
  }

  @Test
  void knowsEveryActionOnce() {
    assertThat(services.audit().actions(ada))
        .containsExactly(
            "account.made", "account.renamed", "account.role", "link.made", "token.made");
  }

  @Test
  void isForAdministratorsOnly() {
    assertThatThrownBy(() -> services.audit().find(rosa, AuditQuery.newest(1)))
        .isInstanceOf(NotAllowedException.class);
    assertThatThrownBy(() -> services.audit().actions(Actor.VISITOR))
        .isInstanceOf(NotAllowedException.class);
  }
}
