package org.hedgerow.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hedgerow.accounts.SignInResult.SignedIn;
import org.hedgerow.accounts.SignInResult.TooEarly;
import org.hedgerow.accounts.SignInResult.Wrong;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.NotAllowedException;
import org.hedgerow.operations.NotFoundException;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What holds of accounts wherever they are kept. */
public abstract class AccountsContract {
  private static final String PASSWORD = "wild cherry and hazel";
  private static final String HOME = "192.0.2.7";
  private static final String ELSEWHERE = "198.51.100.1";

  private final SettableClock clock = new SettableClock();
  private AccountRepository book;
  private AccountServices services;

  /** An empty one for each test. */
  protected abstract AccountRepository book();

  @BeforeEach
  void open() {
    book = book();
    services = AccountServices.of(book, new PlainHash(), clock);
  }

  private Actor person(String name, Role role) {
    return Actor.of(account(name, role));
  }

  private Account account(String name, Role role) {
    Secret link = services.invitations().make(Actor.OPERATOR, role, 7);
    return services.invitations().accept(link, new NewAccount(name, name, PASSWORD));
  }

  private SignInResult signIn(String name, String password) {
    return services.signIn().signIn(name, password, SignInOrigin.of(HOME, "a browser"));
  }

  private Secret session(String name) {
    return ((SignedIn) signIn(name, PASSWORD)).session();
  }

  private static void assertRefused(ThrowingCallable attempt, String field) {
    assertThatThrownBy(attempt)
        .isInstanceOfSatisfying(
            RejectedException.class,
            refused -> assertThat(refused.errors()).extracting(FieldError::field).contains(field));
  }

  @Test
  void theFirstAdministratorComesByALinkThatIsGoodOnce() {
    Secret link = services.firstAdministrator().link().orElseThrow();
    Account first = services.invitations().accept(link, new NewAccount("Ada", "Ada B.", PASSWORD));
    assertThat(first.role()).isEqualTo(Role.ADMINISTRATOR);
    assertThat(first.name()).isEqualTo("ada");
    assertThat(services.firstAdministrator().link()).isEmpty();
    assertThatThrownBy(
            () -> services.invitations().accept(link, new NewAccount("eve", "Eve", PASSWORD)))
        .isInstanceOf(InvalidLinkException.class);
  }

  @Test
  void aNewStartVoidsTheLinkOfTheOneBefore() {
    Secret old = services.firstAdministrator().link().orElseThrow();
    Secret fresh = services.firstAdministrator().link().orElseThrow();
    assertThat(services.invitations().look(old)).isEmpty();
    assertThat(services.invitations().look(fresh)).isPresent();
  }

  @Test
  void theFirstLinkIsWorthNothingOnceThereIsAnAdministrator() {
    Secret link = services.firstAdministrator().link().orElseThrow();
    account("ada", Role.ADMINISTRATOR);
    assertThatThrownBy(
            () -> services.invitations().accept(link, new NewAccount("eve", "Eve", PASSWORD)))
        .isInstanceOf(InvalidLinkException.class);
    assertThat(services.people().all(Actor.OPERATOR)).hasSize(1);
  }

  @Test
  void anInvitationGivesItsRoleOnce() {
    Secret link = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 7);
    Account account = services.invitations().accept(link, new NewAccount("rosa", "Rosa", PASSWORD));
    assertThat(account.role()).isEqualTo(Role.REVIEWER);
    assertThatThrownBy(
            () -> services.invitations().accept(link, new NewAccount("eve", "Eve", PASSWORD)))
        .isInstanceOf(InvalidLinkException.class);
  }

  @Test
  void anInvitationExpires() {
    Secret link = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 7);
    clock.goOn(Duration.ofDays(7).minusSeconds(1));
    assertThat(services.invitations().look(link)).isPresent();
    clock.goOn(Duration.ofSeconds(1));
    assertThat(services.invitations().look(link)).isEmpty();
    assertThatThrownBy(
            () -> services.invitations().accept(link, new NewAccount("eve", "Eve", PASSWORD)))
        .isInstanceOf(InvalidLinkException.class);
  }

  @Test
  void anInvitationCanBeWithdrawn() {
    Secret link = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 7);
    int id = services.invitations().open(Actor.OPERATOR).get(0).id();
    services.invitations().withdraw(Actor.OPERATOR, id);
    assertThat(services.invitations().look(link)).isEmpty();
    assertThatThrownBy(() -> services.invitations().withdraw(Actor.OPERATOR, id))
        .isInstanceOf(InvalidLinkException.class);
  }

  @Test
  void aMistakeLeavesTheInvitationGood() {
    account("rosa", Role.CONTRIBUTOR);
    Secret link = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 7);
    assertRefused(
        () -> services.invitations().accept(link, new NewAccount("ROSA", "R", PASSWORD)), "name");
    assertRefused(
        () -> services.invitations().accept(link, new NewAccount("rose", "R", "x")), "password");
    assertThat(services.invitations().look(link)).isPresent();
  }

  @Test
  void ofSeveralWhoUseALinkAtOnceOneGetsTheAccount() throws Exception {
    Secret link = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 7);
    List<Optional<Account>> got =
        atOnce(
            8,
            number -> {
              try {
                return Optional.of(
                    services
                        .invitations()
                        .accept(link, new NewAccount("rosa" + number, "Rosa", PASSWORD)));
              } catch (InvalidLinkException spent) {
                return Optional.empty();
              }
            });
    assertThat(got.stream().flatMap(Optional::stream)).hasSize(1);
    assertThat(services.people().all(Actor.OPERATOR)).hasSize(1);
  }

  @Test
  void onlyAdministratorsInvite() {
    for (Role role : List.of(Role.CONTRIBUTOR, Role.REVIEWER)) {
      Actor actor = person("p" + role.label(), role);
      assertThatThrownBy(() -> services.invitations().make(actor, Role.CONTRIBUTOR, 7))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(() -> services.people().all(actor))
          .isInstanceOf(NotAllowedException.class);
      assertThatThrownBy(() -> services.passwords().link(actor, "previewer"))
          .isInstanceOf(NotAllowedException.class);
    }
  }

  @Test
  void invitesForNoUnreasonableTimeAndNoVisitors() {
    for (int days : new int[] {-1, 0, 91}) {
      assertRefused(() -> services.invitations().make(Actor.OPERATOR, Role.REVIEWER, days), "days");
    }
    assertRefused(() -> services.invitations().make(Actor.OPERATOR, Role.VISITOR, 7), "role");
  }

  @Test
  void signsInWithAnyWayOfWritingTheName() {
    account("zoë", Role.CONTRIBUTOR);
    for (String typed : List.of("zoë", " ZOË ", "zoe\u0308")) {
      assertThat(signIn(typed, PASSWORD)).as(typed).isInstanceOf(SignedIn.class);
    }
  }

  @Test
  void tellsNobodyWhetherAnAccountExists() {
    account("rosa", Role.CONTRIBUTOR);
    assertThat(signIn("rosa", "not this one")).isEqualTo(new Wrong());
    assertThat(signIn("nobody", "not this one")).isEqualTo(new Wrong());
  }

  @Test
  void aNameThatNobodyCanHaveIsWrong() {
    for (String name : List.of("", "\u0000", "ro\u0000sa", "a b", "x".repeat(3_000))) {
      clock.goOn(Duration.ofDays(2));
      assertThat(signIn(name, "a guess")).as(name).isEqualTo(new Wrong());
    }
  }

  @Test
  void makesThoseWaitWhoFailAgainAndAgain() {
    account("rosa", Role.CONTRIBUTOR);
    for (String name : List.of("rosa", "nobody")) {
      for (int i = 0; i < 5; i++) {
        assertThat(signIn(name, "guess " + i)).isEqualTo(new Wrong());
      }
      assertThat(signIn(name, PASSWORD)).isEqualTo(new TooEarly(Duration.ofSeconds(1)));
      clock.goOn(Duration.ofSeconds(1));
      assertThat(signIn(name, "guess")).isEqualTo(new Wrong());
      assertThat(signIn(name, "guess")).isEqualTo(new TooEarly(Duration.ofSeconds(2)));
      clock.goOn(Duration.ofSeconds(2));
    }
    assertThat(signIn("rosa", PASSWORD)).isInstanceOf(SignedIn.class);
    assertThat(signIn("rosa", "guess")).as("forgiven").isEqualTo(new Wrong());
  }

  @Test
  void nobodyIsLockedOutForLong() {
    account("rosa", Role.CONTRIBUTOR);
    for (int i = 0; i < 30; i++) {
      clock.goOn(Duration.ofMinutes(15));
      assertThat(signIn("rosa", "guess")).isEqualTo(new Wrong());
    }
    clock.goOn(Duration.ofMinutes(15));
    assertThat(signIn("rosa", PASSWORD)).isInstanceOf(SignedIn.class);
  }

  private SignInResult signIn(String name, String password, String address, Secret device) {
    return services
        .signIn()
        .signIn(name, password, new SignInOrigin(address, "", Optional.of(device)));
  }

  private SignInResult signInFrom(String address, String name, String password) {
    return services.signIn().signIn(name, password, SignInOrigin.of(address, ""));
  }

  private Secret device(SignInResult result) {
    return ((SignedIn) result).device();
  }

  @Test
  void whoeverGuessesKeepsNeitherTheOwnerNorAColleagueWaiting() {
    account("rosa", Role.CONTRIBUTOR);
    account("ivan", Role.CONTRIBUTOR);
    for (int i = 0; i < 80; i++) {
      signInFrom(ELSEWHERE, "rosa", "guess " + i);
      clock.goOn(Duration.ofMinutes(3));
    }
    assertThat(signInFrom(ELSEWHERE, "rosa", PASSWORD)).isInstanceOf(TooEarly.class);
    assertThat(signIn("rosa", PASSWORD)).as("from elsewhere").isInstanceOf(SignedIn.class);
    assertThat(signInFrom(ELSEWHERE, "ivan", PASSWORD))
        .as("a colleague behind the same address")
        .isInstanceOf(SignedIn.class);
  }

  @Test
  void aNetworkThatTriesManyNamesWaitsAMinuteAtMostAndKnownDevicesDoNot() {
    account("rosa", Role.CONTRIBUTOR);
    Secret device = device(signIn("rosa", PASSWORD));
    for (int i = 0; i < 80; i++) {
      clock.goOn(Duration.ofMinutes(i < 60 ? 0 : 1));
      assertThat(signIn("name" + i, "guess")).isEqualTo(new Wrong());
    }
    assertThat(signIn("rosa", PASSWORD)).isEqualTo(new TooEarly(Duration.ofMinutes(1)));
    assertThat(signIn("rosa", PASSWORD, HOME, device)).isInstanceOf(SignedIn.class);
    assertThat(signInFrom(ELSEWHERE, "rosa", PASSWORD)).isInstanceOf(SignedIn.class);
  }

  @Test
  void anAccountThatManyNetworksGuessAtSlowsStrangersAMinuteAtMostAndNotItsOwnersDevices() {
    account("rosa", Role.CONTRIBUTOR);
    Secret device = device(signIn("rosa", PASSWORD));
    for (int i = 0; i < 70; i++) {
      clock.goOn(Duration.ofMinutes(i < 50 ? 0 : 1));
      assertThat(signInFrom("203.0.113." + i / 5, "rosa", "guess")).isEqualTo(new Wrong());
    }
    assertThat(signIn("rosa", PASSWORD)).isEqualTo(new TooEarly(Duration.ofMinutes(1)));
    assertThat(signIn("rosa", PASSWORD, HOME, device)).isInstanceOf(SignedIn.class);
  }

  @Test
  void aFewGuessesADayNeverAddUp() {
    account("rosa", Role.CONTRIBUTOR);
    for (int day = 0; day < 15; day++) {
      for (int i = 0; i < 5; i++) {
        signInFrom(ELSEWHERE, "rosa", "guess");
      }
      clock.goOn(Duration.ofHours(13));
      assertThat(signIn("rosa", PASSWORD)).as("day " + day).isInstanceOf(SignedIn.class);
      clock.goOn(Duration.ofHours(13));
    }
    assertThat(signIn("rosa", PASSWORD)).isInstanceOf(SignedIn.class);
  }

  @Test
  void onAKnownDeviceGuessesCountToo() {
    account("rosa", Role.CONTRIBUTOR);
    Secret device = device(signIn("rosa", PASSWORD));
    for (int i = 0; i < 5; i++) {
      assertThat(signIn("rosa", "guess", HOME, device)).isEqualTo(new Wrong());
    }
    assertThat(signIn("rosa", PASSWORD, HOME, device)).isInstanceOf(TooEarly.class);
    assertThat(signIn("rosa", PASSWORD)).as("on another").isInstanceOf(SignedIn.class);
  }

  @Test
  void aDeviceIsKnownForThoseWhoSignedInOnItAndByItsLastSecret() {
    account("rosa", Role.CONTRIBUTOR);
    account("ivan", Role.CONTRIBUTOR);
    Secret first = device(signIn("rosa", PASSWORD));
    Secret second = device(signIn("ivan", PASSWORD, HOME, first));
    for (int i = 0; i < 5; i++) {
      signIn("rosa", "guess");
    }
    assertThat(signIn("rosa", PASSWORD, HOME, first)).as("a copy").isInstanceOf(TooEarly.class);
    Secret third = device(signIn("rosa", PASSWORD, HOME, second));
    for (int i = 0; i < 5; i++) {
      signIn("ivan", "guess");
    }
    assertThat(signIn("ivan", PASSWORD, HOME, third)).isInstanceOf(SignedIn.class);
    assertThat(signIn("otto", "guess", HOME, third)).isEqualTo(new Wrong());
  }

  @Test
  void anIpv6NetworkCountsAsOne() {
    account("rosa", Role.CONTRIBUTOR);
    for (int i = 0; i < 5; i++) {
      assertThat(signInFrom("2001:db8::" + i, "rosa", "guess")).isEqualTo(new Wrong());
    }
    assertThat(signInFrom("2001:db8::9", "rosa", PASSWORD)).isInstanceOf(TooEarly.class);
    assertThat(signInFrom("2001:db8:0:1::9", "rosa", PASSWORD)).isInstanceOf(SignedIn.class);
  }

  @Test
  void whoeverInventsNamesMakesFewRows() {
    for (int i = 0; i < 300; i++) {
      signIn("name" + i, "guess");
    }
    assertThat(rowsOfFailures()).isLessThanOrEqualTo(2 * 60 + 2);
  }

  @Test
  void ofTooManyRowsTheOldestGo() {
    for (int i = 0; i < 9; i++) {
      clock.goOn(Duration.ofSeconds(1));
      signInFrom("192.0.2." + i, "rosa", "guess");
    }
    assertThat(book.<Integer>inTransaction(unit -> unit.failures().keepNewest(2))).isEqualTo(17);
    assertThat(rowsOfFailures()).isEqualTo(2);
  }

  private int rowsOfFailures() {
    return book.inTransaction(unit -> unit.failures().keepNewest(0));
  }

  @Test
  void anAdministratorsLinkMakesUpForWrongPasswords() {
    Account rosa = account("rosa", Role.CONTRIBUTOR);
    for (int i = 0; i < 6; i++) {
      signIn("rosa", "forgotten");
    }
    Secret link = services.passwords().link(Actor.OPERATOR, rosa.id());
    services.passwords().set(link, "another good one");
    assertThat(signIn("rosa", "another good one")).isInstanceOf(SignedIn.class);
  }

  @Test
  void manyAttemptsAtOnceAreNoWayAround() throws Exception {
    account("rosa", Role.CONTRIBUTOR);
    List<SignInResult> results = atOnce(20, number -> signIn("rosa", "guess " + number));
    assertThat(results.stream().filter(Wrong.class::isInstance)).hasSize(5);
    assertThat(results.stream().filter(TooEarly.class::isInstance)).hasSize(15);
  }

  @Test
  void aSessionEndsWhenItIsIdle() {
    account("rosa", Role.CONTRIBUTOR);
    Secret session = session("rosa");
    for (int i = 0; i < 3; i++) {
      clock.goOn(Duration.ofHours(11));
      assertThat(services.sessions().find(session)).isPresent();
    }
    clock.goOn(Duration.ofHours(12));
    assertThat(services.sessions().find(session)).isEmpty();
  }

  @Test
  void aSessionEndsAfterTwoWeeksHoweverMuchItIsUsed() {
    account("rosa", Role.CONTRIBUTOR);
    Secret session = session("rosa");
    for (int i = 0; i < 2 * 14 - 1; i++) {
      clock.goOn(Duration.ofHours(11));
      clock.goOn(Duration.ofHours(1).minusSeconds(1));
      assertThat(services.sessions().find(session)).isPresent();
    }
    clock.goOn(Duration.ofHours(11));
    assertThat(services.sessions().find(session)).isPresent();
    clock.goOn(Duration.ofHours(1));
    clock.goOn(Duration.ofSeconds(27));
    assertThat(services.sessions().find(session)).isEmpty();
  }

  @Test
  void endsSessionsOfOnesOwn() {
    Actor rosa = person("rosa", Role.CONTRIBUTOR);
    Actor tom = person("tom", Role.REVIEWER);
    int id = rosa.requireAccount().id();
    Secret session = session("rosa");
    int number = services.sessions().of(rosa, id).get(0).id();
    assertThatThrownBy(() -> services.sessions().end(tom, id, number))
        .isInstanceOf(NotAllowedException.class);
    services.sessions().end(rosa, id, number);
    assertThat(services.sessions().find(session)).isEmpty();
    assertThatThrownBy(() -> services.sessions().end(rosa, id, number))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void aSessionOfAnotherIsNotEndedByItsNumber() {
    Actor rosa = person("rosa", Role.CONTRIBUTOR);
    Account tom = account("tom", Role.CONTRIBUTOR);
    Secret session = session("tom");
    int number = services.sessions().of(Actor.OPERATOR, tom.id()).get(0).id();
    assertThatThrownBy(() -> services.sessions().end(rosa, rosa.requireAccount().id(), number))
        .isInstanceOf(NotFoundException.class);
    assertThat(services.sessions().find(session)).isPresent();
  }

  @Test
  void aNewPasswordEndsAllOtherSessions() {
    Actor rosa = person("rosa", Role.CONTRIBUTOR);
    Secret here = session("rosa");
    Secret elsewhere = session("rosa");
    int number = services.sessions().find(here).orElseThrow().session().id();
    services.passwords().change(rosa, PASSWORD, "another good one", number);
    assertThat(services.sessions().find(here)).isPresent();
    assertThat(services.sessions().find(elsewhere)).isEmpty();
    assertThat(signIn("rosa", PASSWORD)).isEqualTo(new Wrong());
    assertThat(signIn("rosa", "another good one")).isInstanceOf(SignedIn.class);
  }

  @Test
  void aNewPasswordTakesTheOldOne() {
    Actor rosa = person("rosa", Role.CONTRIBUTOR);
    for (int i = 0; i < 5; i++) {
      assertRefused(
          () -> services.passwords().change(rosa, "a guess", "another good one", 1), "oldPassword");
    }
    assertThatThrownBy(() -> services.passwords().change(rosa, PASSWORD, "another good one", 1))
        .as("tried too often")
        .hasMessageContaining("1 second");
  }

  @Test
  void aPasswordLinkIsGoodOnceAndEndsAllSessions() {
    Account rosa = account("rosa", Role.CONTRIBUTOR);
    Secret session = session("rosa");
    Secret older = services.passwords().link(Actor.OPERATOR, "Rosa");
    Secret link = services.passwords().link(Actor.OPERATOR, rosa.id());
    assertThatThrownBy(() -> services.passwords().set(older, "another good one"))
        .isInstanceOf(InvalidLinkException.class);
    assertRefused(() -> services.passwords().set(link, "short"), "password");
    services.passwords().set(link, "another good one");
    assertThat(services.sessions().find(session)).isEmpty();
    assertThat(signIn("rosa", "another good one")).isInstanceOf(SignedIn.class);
    assertThatThrownBy(() -> services.passwords().set(link, "yet another one"))
        .isInstanceOf(InvalidLinkException.class);
  }

  @Test
  void aPasswordLinkMakesNoAccountAndAnInvitationSetsNoPassword() {
    account("rosa", Role.CONTRIBUTOR);
    Secret link = services.passwords().link(Actor.OPERATOR, "rosa");
    assertThatThrownBy(
            () -> services.invitations().accept(link, new NewAccount("eve", "Eve", PASSWORD)))
        .isInstanceOf(InvalidLinkException.class);
    Secret invitation = services.invitations().make(Actor.OPERATOR, Role.REVIEWER, 1);
    assertThatThrownBy(() -> services.passwords().set(invitation, "another good one"))
        .isInstanceOf(InvalidLinkException.class);
    assertThatThrownBy(() -> services.passwords().link(Actor.OPERATOR, "nobody"))
        .isInstanceOf(NotFoundException.class);
  }

  @Test
  void aTokenActsForItsOwnerAndNeverMayMore() {
    Actor rosa = person("rosa", Role.REVIEWER);
    int id = rosa.requireAccount().id();
    Secret token = services.tokens().make(rosa, "a script", Role.REVIEWER, 30);
    assertThat(roleOf(token)).contains(Role.REVIEWER);
    assertThatThrownBy(() -> services.tokens().make(rosa, "more", Role.ADMINISTRATOR, 30))
        .isInstanceOf(NotAllowedException.class);

    services.people().changeRole(Actor.OPERATOR, id, Role.CONTRIBUTOR);
    assertThat(roleOf(token)).contains(Role.CONTRIBUTOR);

    services.people().changeActive(Actor.OPERATOR, id, false);
    assertThat(roleOf(token)).isEmpty();
  }

  @Test
  void aTokenThatMayLessMakesNoneThatMayMore() {
    Actor rosa = person("rosa", Role.REVIEWER);
    Secret token = services.tokens().make(rosa, "a script", Role.CONTRIBUTOR, 30);
    Actor program = services.tokens().find(token).orElseThrow().actor();
    assertThatThrownBy(() -> services.tokens().make(program, "more", Role.REVIEWER, 30))
        .isInstanceOf(NotAllowedException.class);
  }

  @Test
  void aTokenExpiresAndCanBeRevoked() {
    Actor rosa = person("rosa", Role.REVIEWER);
    int id = rosa.requireAccount().id();
    Secret token = services.tokens().make(rosa, "a script", Role.REVIEWER, 1);
    Secret other = services.tokens().make(rosa, "another", Role.REVIEWER, 2);
    clock.goOn(Duration.ofDays(1));
    assertThat(roleOf(token)).isEmpty();
    assertThat(roleOf(other)).isPresent();
    services.tokens().revoke(rosa, id, services.tokens().of(rosa, id).get(1).id());
    assertThat(roleOf(other)).isEmpty();
  }

  @Test
  void refusesTokensThatMakeNoSense() {
    Actor rosa = person("rosa", Role.REVIEWER);
    assertRefused(() -> services.tokens().make(rosa, " ", Role.REVIEWER, 1), "label");
    assertRefused(() -> services.tokens().make(rosa, "x", Role.REVIEWER, 0), "days");
    assertRefused(() -> services.tokens().make(rosa, "x", Role.REVIEWER, 367), "days");
    assertRefused(() -> services.tokens().make(rosa, "x", Role.VISITOR, 1), "role");
  }

  private Optional<Role> roleOf(Secret token) {
    return services.tokens().find(token).map(found -> found.actor().role());
  }

  @Test
  void somebodyAlwaysLooksAfterAccounts() {
    Account ada = account("ada", Role.ADMINISTRATOR);
    Actor actor = Actor.of(ada);
    assertRefused(() -> services.people().changeRole(actor, ada.id(), Role.REVIEWER), "account");
    assertRefused(() -> services.people().changeActive(actor, ada.id(), false), "account");

    Account bea = account("bea", Role.ADMINISTRATOR);
    services.people().changeRole(actor, ada.id(), Role.REVIEWER);
    assertRefused(() -> services.people().changeActive(Actor.of(bea), bea.id(), false), "account");
  }

  @Test
  void twoAdministratorsCannotUnmakeEachOtherAtOnce() throws Exception {
    Account ada = account("ada", Role.ADMINISTRATOR);
    Account bea = account("bea", Role.ADMINISTRATOR);
    List<Account> both = List.of(ada, bea);
    atOnce(
        2,
        number -> {
          try {
            services
                .people()
                .changeActive(Actor.of(both.get(number)), both.get(1 - number).id(), false);
            return true;
          } catch (RejectedException refused) {
            return false;
          }
        });
    assertThat(services.people().all(Actor.OPERATOR).stream().filter(Account::active)).hasSize(1);
  }

  @Test
  void whoIsNotActiveIsOutAtOnce() {
    Account rosa = account("rosa", Role.CONTRIBUTOR);
    Secret session = session("rosa");
    services.people().changeActive(Actor.OPERATOR, rosa.id(), false);
    assertThat(services.sessions().find(session)).isEmpty();
    assertThat(signIn("rosa", PASSWORD)).isEqualTo(new Wrong());
    services.people().changeActive(Actor.OPERATOR, rosa.id(), true);
    assertThat(signIn("rosa", PASSWORD)).isInstanceOf(SignedIn.class);
    assertThat(services.sessions().find(session)).as("the old one").isEmpty();
  }

  @Test
  void namesComeInEveryScript() {
    Account account =
        services
            .invitations()
            .accept(
                services.invitations().make(Actor.OPERATOR, Role.CONTRIBUTOR, 1),
                new NewAccount("नीलम", "  نور  الهدى ", "пароль с пробелами"));
    assertThat(account.name()).isEqualTo("नीलम");
    assertThat(account.displayName()).isEqualTo("نور الهدى");
    services.people().rename(Actor.of(account), account.id(), "李 明");
    assertThat(services.people().find(Actor.of(account), account.id()).orElseThrow().displayName())
        .isEqualTo("李 明");
  }

  @Test
  void peopleAreRenamedByThemselvesOrAnAdministrator() {
    Account rosa = account("rosa", Role.CONTRIBUTOR);
    Actor tom = person("tom", Role.REVIEWER);
    assertThatThrownBy(() -> services.people().rename(tom, rosa.id(), "Rosie"))
        .isInstanceOf(NotAllowedException.class);
    assertRefused(
        () -> services.people().rename(Actor.of(rosa), rosa.id(), "Ro\u202Esa"), "displayName");
    assertThatThrownBy(() -> services.people().rename(Actor.OPERATOR, 4711, "Nobody"))
        .isInstanceOf(NotFoundException.class);
  }

  private interface Numbered<T> {
    T run(int number);
  }

  private static <T> List<T> atOnce(int count, Numbered<T> work) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(count);
    try {
      List<Callable<T>> tasks =
          Stream.iterate(0, number -> number + 1)
              .limit(count)
              .map(number -> (Callable<T>) () -> work.run(number))
              .toList();
      List<T> results = new java.util.ArrayList<>();
      for (Future<T> result : threads.invokeAll(tasks)) {
        results.add(result.get());
      }
      return results;
    } finally {
      threads.shutdownNow();
    }
  }
}
