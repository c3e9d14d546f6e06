package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;

/** Lets people in who know their password. */
public final class SignIn {
  private record Known(Account account, String passwordHash) {}

  private record Entrance(
      Optional<Duration> delay, Optional<Known> known, Optional<String> device) {}

  private final AccountRepository book;
  private final PasswordHash passwords;
  private final Sessions sessions;
  private final Devices devices;
  private final InstantSource clock;
  private final String nobodysHash;

  SignIn(
      AccountRepository book,
      PasswordHash passwords,
      Sessions sessions,
      Devices devices,
      InstantSource clock) {
    this.book = book;
    this.devices = devices;
    this.passwords = passwords;
    this.sessions = sessions;
    this.clock = clock;
    this.nobodysHash = passwords.of("nobody has this password");
  }

  /** Takes as long for a name that nobody has as for one that somebody has. */
  public SignInResult signIn(String typedName, String password, SignInOrigin visit) {
    String name = possible(NameRules.normalName(typedName));
    Entrance entrance = book.inTransaction(unit -> enter(unit, name, visit));
    if (entrance.delay().isPresent()) {
      return new SignInResult.TooEarly(entrance.delay().get());
    }
    Optional<Known> known = entrance.known();
    boolean fits =
        passwords.fits(bounded(password), known.map(Known::passwordHash).orElse(nobodysHash));
    return fits && known.isPresent()
        ? book.inTransaction(unit -> open(unit, known.get(), visit, entrance.device()))
        : new SignInResult.Wrong();
  }

  /** No account can have any other name, and PostgreSQL takes no character 0. */
  private static String possible(String name) {
    return NameRules.nameFault(name).isPresent() ? "" : name;
  }

  /** Nobody's password is longer, and normalising megabytes would take a while. */
  private static String bounded(String password) {
    return password.length() > 2 * PasswordRules.MAX_LENGTH ? "" : password;
  }

  private Entrance enter(AccountUnitOfWork unit, String name, SignInOrigin visit) {
    Instant now = clock.instant();
    Throttle.tidy(unit.failures(), now);
    Optional<Account> account = unit.accounts().find(name).filter(Account::active);
    Optional<String> device = account.flatMap(each -> devices.known(unit, visit, each.id(), now));
    return new Entrance(
        throttle(unit, name, visit, device).enter(),
        account.map(each -> new Known(each, unit.accounts().passwordHash(each.id()))),
        device);
  }

  /** The account may have changed while the password was checked. */
  private SignInResult open(
      AccountUnitOfWork unit, Known known, SignInOrigin visit, Optional<String> device) {
    Optional<Account> account =
        unit.accounts()
            .find(known.account().id())
            .filter(Account::active)
            .filter(now -> unit.accounts().passwordHash(now.id()).equals(known.passwordHash()));
    if (account.isEmpty()) {
      return new SignInResult.Wrong();
    }
    throttle(unit, known.account().name(), visit, device).succeed();
    Secret session = sessions.start(unit, account.get(), visit.client());
    Audit.of(unit, clock)
        .add(Actor.of(account.get()), "session.started", Audit.account(account.get()), Map.of());
    return new SignInResult.SignedIn(
        account.get(), session, devices.remember(unit, visit, account.get().id(), clock.instant()));
  }

  private Throttle throttle(
      AccountUnitOfWork unit, String name, SignInOrigin visit, Optional<String> device) {
    Instant now = clock.instant();
    return device
        .map(known -> Throttle.ofDevice(unit.failures(), name, known, now))
        .orElseGet(
            () -> Throttle.ofStranger(unit.failures(), name, Network.of(visit.address()), now));
  }
}
