package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.Actor;
import picocli.CommandLine.Command;

@Command(name = "list", description = "Prints all accounts: name, role, name that others see.")
final class AccountListCommand extends AccountTaskCommand {
  @Override
  void run(AccountServices accounts, PrintWriter out) {
    accounts
        .people()
        .all(Actor.OPERATOR)
        .forEach(
            account ->
                out.println(
                    "%s\t%s\t%s%s"
                        .formatted(
                            account.name(),
                            account.role().label(),
                            account.displayName(),
                            account.active() ? "" : "\tmay not sign in")));
  }
}
