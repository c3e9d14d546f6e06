package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;

/** Lets people in who know their password. */
public final class SignIn {
  private record Known(Account account, String passwordHash) {}

  private record Entrance(
      Optional<Duration> delay, Optional<Known> known, Optional<String> device) {}

  private final AccountBook book;
  private final PasswordHash passwords;
  private final Sessions sessions;
  private final Devices devices;
  private final InstantSource clock;
  private final String nobodysHash;

  SignIn(
      AccountBook book,
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
  public SignInResult signIn(String typedName, String password, Visit visit) {
    String name = possible(NameRules.normalName(typedName));
    Entrance entrance = book.inTransaction(page -> enter(page, name, visit));
    if (entrance.delay().isPresent()) {
      return new SignInResult.TooEarly(entrance.delay().get());
    }
    Optional<Known> known = entrance.known();
    boolean fits =
        passwords.fits(bounded(password), known.map(Known::passwordHash).orElse(nobodysHash));
    return fits && known.isPresent()
        ? book.inTransaction(page -> open(page, known.get(), visit, entrance.device()))
        : new SignInResult.Wrong();
  }

  /** No account can have any other name, and PostgreSQL takes no character 0. */
  private static String possible(String name) {
    return NameRules.nameFault(name).isPresent() ? "" : name;
  }

  /** Nobody's password is longer, and normalising megabytes would take a while. */
  private static String bounded(String password) {
    return password.length() > 2 * PasswordRules.LONGEST ? "" : password;
  }

  private Entrance enter(AccountPage page, String name, Visit visit) {
    Instant now = clock.instant();
    Throttle.tidy(page.failures(), now);
    Optional<Account> account = page.accounts().find(name).filter(Account::active);
    Optional<String> device = account.flatMap(each -> devices.known(page, visit, each.id(), now));
    return new Entrance(
        throttle(page, name, visit, device).enter(),
        account.map(each -> new Known(each, page.accounts().passwordHash(each.id()))),
        device);
  }

  /** The account may have changed while the password was checked. */
  private SignInResult open(AccountPage page, Known known, Visit visit, Optional<String> device) {
    Optional<Account> account =
        page.accounts()
            .find(known.account().id())
            .filter(Account::active)
            .filter(now -> page.accounts().passwordHash(now.id()).equals(known.passwordHash()));
    if (account.isEmpty()) {
      return new SignInResult.Wrong();
    }
    throttle(page, known.account().name(), visit, device).succeed();
    Secret session = sessions.start(page, account.get(), visit.client());
    Audit.of(page, clock)
        .add(Actor.of(account.get()), "session.started", Audit.account(account.get()), Map.of());
    return new SignInResult.SignedIn(
        account.get(), session, devices.remember(page, visit, account.get().id(), clock.instant()));
  }

  private Throttle throttle(AccountPage page, String name, Visit visit, Optional<String> device) {
    Instant now = clock.instant();
    return device
        .map(known -> Throttle.ofDevice(page.failures(), name, known, now))
        .orElseGet(
            () -> Throttle.ofStranger(page.failures(), name, Network.of(visit.address()), now));
  }
}
