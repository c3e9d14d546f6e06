package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.Role;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(
    name = "invite",
    description = "Prints the path of a link by which one person gets an account.")
final class AccountInviteCommand extends AccountTaskCommand {
  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      description = "contributor, reviewer or administrator.")
  private String role = "";

  @Option(
      names = "--days",
      paramLabel = "NUMBER",
      description = "How many days the link is good for (default: ${DEFAULT-VALUE}).")
  private int days = 7;

  @Override
  void run(AccountServices accounts, PrintWriter out) {
    Role wanted =
        Role.ofAccount(role)
            .orElseThrow(
                () ->
                    wrongUsage(
                        "--role must be contributor, reviewer or administrator, not " + role));
    out.println("/welcome/" + accounts.invitations().make(Actor.OPERATOR, wanted, days).text());
  }
}
