package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.accounts.AccountServices;
import org.hedgerow.operations.Actor;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "link",
    description = "Prints the path of a link by which somebody chooses a new password.")
final class AccountLinkCommand extends AccountTaskCommand {
  @Parameters(paramLabel = "NAME", description = "The name that they sign in with.")
  private String name = "";

  @Override
  void run(AccountServices accounts, PrintWriter out) {
    out.println("/welcome/" + accounts.passwords().link(Actor.OPERATOR, name).text());
  }
}
