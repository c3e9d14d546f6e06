package org.hedgerow.app.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.CentreEdit;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.review.ReviewServices;

/** Adds the invented centre to a bank in which nobody has an account yet. */
public final class DemoCentre {
  private static final String NAME = "Quillmere Training Centre";
  private static final int FOUNDED_HOURS_AGO = 8 * 24;

  /**
   * By which somebody signs in.
   *
   * @param password told only here
   */
  public record Login(String name, String displayName, String role, String password) {}

  private final Function<InstantSource, AccountServices> accounts;
  private final Function<InstantSource, ReviewServices> reviews;
  private final DemoPasswords passwords;

  /**
   * @param accounts services that go by a clock
   * @param reviews likewise
   * @param lexicon for passwords that can be read
   */
  public DemoCentre(
      Function<InstantSource, AccountServices> accounts,
      Function<InstantSource, ReviewServices> reviews,
      Lexicon lexicon) {
    this.accounts = accounts;
    this.reviews = reviews;
    this.passwords = new DemoPasswords(lexicon);
  }

  /** When the centre began, if it is now. */
  public static Instant founded(Instant now) {
    return now.minus(Duration.ofHours(FOUNDED_HOURS_AGO));
  }

  /**
   * A dozen people, and what they did in the week before now.
   *
   * @return how they sign in; empty if somebody has an account already, and nothing was added
   */
  public List<Login> add(Instant now) {
    DemoClock clock = new DemoClock(now);
    AccountServices services = accounts.apply(clock);
    if (!services.people().all(Actor.OPERATOR).isEmpty()) {
      return List.of();
    }
    clock.goTo(FOUNDED_HOURS_AGO);
    List<Login> logins = new ArrayList<>();
    Map<String, Account> members = new LinkedHashMap<>();
    for (DemoScript.Member member : DemoScript.members()) {
      Login login =
          new Login(member.name(), member.displayName(), member.role(), passwords.fresh());
      members.put(member.name(), account(services, member, login.password()));
      logins.add(login);
    }
    nameCentre(services, members);
    new DemoWeek(reviews.apply(clock), clock, members).play(DemoScript.entries());
    return List.copyOf(logins);
  }

  private static void nameCentre(AccountServices services, Map<String, Account> members) {
    Account first = members.values().iterator().next();
    services
        .centre()
        .change(
            Actor.of(first), new CentreEdit(Optional.of(NAME), Optional.empty()), present -> true);
  }

  private static Account account(
      AccountServices services, DemoScript.Member member, String password) {
    return services
        .invitations()
        .accept(
            services.invitations().make(Actor.OPERATOR, member.accountRole(), 1),
            new NewAccount(member.name(), member.displayName(), password));
  }
}
