package org.hedgerow.fuzz;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.Map;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.accounts.NewAccount;
import org.hedgerow.accounts.PlainHash;
import org.hedgerow.accounts.Secret;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.accounts.JdbiAccountRepository;

/**
 * Accounts with tokens in the bank of a data folder, made as whoever can reach it may make them.
 */
public final class TestTokens {
  private static final int SPARE = 3;

  private final AccountServices services;

  private TestTokens(AccountServices services) {
    this.services = services;
  }

  /**
   * One of every role, by its name in small letters. Before them come three spare accounts and as
   * many tokens, for requests that do harm to the first of them.
   *
   * @param data the data folder, served or not
   */
  public static Map<String, String> ofEveryRole(Path data) {
    try (BankDatabase bank = BankDatabase.embeddedOrRunning(data)) {
      TestTokens tokens = in(bank);
      for (int number = 1; number <= SPARE; number++) {
        tokens.join("spare" + number, Role.CONTRIBUTOR);
      }
      Map<String, String> made = new HashMap<>();
      for (Role role : Role.values()) {
        if (role != Role.VISITOR) {
          made.put(role.label(), tokens.join(role.label(), role));
        }
      }
      return made;
    }
  }

  public static TestTokens in(BankDatabase bank) {
    return new TestTokens(
        AccountServices.of(
            new JdbiAccountRepository(bank), new PlainHash(), InstantSource.system()));
  }

  /** The new account's token. */
  public String join(String name, Role role) {
    Secret link = services.invitations().make(Actor.OPERATOR, role, 1);
    String password = link.text().substring(0, 30);
    Account account = services.invitations().accept(link, new NewAccount(name, name, password));
    return services.tokens().make(Actor.of(account), "test", role, 1).text();
  }
}
