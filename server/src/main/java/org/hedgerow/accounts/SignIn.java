package org.hedgerow.accounts;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;

/** Lets people in who know their password. */
public final class SignIn {
  private record Known(Account account, String passwordHash) {}

  private record Entrance(Optional<Duration> delay, Optional<Known> known) {}

  private final AccountBook book;
  private final PasswordHash passwords;
  private final Sessions sessions;
  private final InstantSource clock;
  private final String nobodysHash;

  SignIn(AccountBook book, PasswordHash passwords, Sessions sessions, InstantSource clock) {
    this.book = book;
    this.passwords = passwords;
    this.sessions = sessions;
    this.clock = clock;
    this.nobodysHash = passwords.of("nobody has this password");
  }

  /**
   * Takes as long for a name that nobody has as for one that somebody has.
   *
   * @param address where the attempt comes from
   * @param client what the browser says of itself
   */
  public SignInResult signIn(String typedName, String password, String address, String client) {
    String name = possible(NameRules.normalName(typedName));
    Entrance entrance = book.inTransaction(page -> enter(page, name, address));
    if (entrance.delay().isPresent()) {
      return new SignInResult.TooEarly(entrance.delay().get());
    }
    Optional<Known> known = entrance.known();
    boolean fits =
        passwords.fits(bounded(password), known.map(Known::passwordHash).orElse(nobodysHash));
    return fits && known.isPresent()
        ? book.inTransaction(page -> open(page, known.get(), address, client))
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

  private Entrance enter(AccountPage page, String name, String address) {
    Optional<Duration> wait = throttle(page, name, address).enter();
    Optional<Known> known =
        page.accounts()
            .find(name)
            .filter(Account::active)
            .map(account -> new Known(account, page.accounts().passwordHash(account.id())));
    return new Entrance(wait, known);
  }

  /** The account may have changed while the password was checked. */
  private SignInResult open(AccountPage page, Known known, String address, String client) {
    Optional<Account> account =
        page.accounts()
            .find(known.account().id())
            .filter(Account::active)
            .filter(now -> page.accounts().passwordHash(now.id()).equals(known.passwordHash()));
    if (account.isEmpty()) {
      return new SignInResult.Wrong();
    }
    throttle(page, known.account().name(), address).succeed();
    Secret session = sessions.start(page, account.get(), client);
    Audit.of(page, clock)
        .add(Actor.of(account.get()), "session.started", Audit.account(account.get()), Map.of());
    return new SignInResult.SignedIn(account.get(), session);
  }

  private Throttle throttle(AccountPage page, String name, String address) {
    Instant now = clock.instant();
    Throttle.tidy(page.failures(), now);
    return new Throttle(page.failures(), name, address, now);
  }
}
