package org.hedgerow.app;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
    name = "account",
    description = "Looks after accounts from the server's own machine, also beside a server.",
    subcommands = {AccountListCommand.class, AccountInviteCommand.class, AccountLinkCommand.class})
final class AccountCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Say list, invite or link.");
  }
}
