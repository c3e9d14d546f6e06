package org.hedgerow.app;

import picocli.CommandLine.Command;

@Command(
    name = "seed",
    description =
        "Fills an empty bank from the seed lexicon and ends. The server does so by itself.")
final class SeedCommand extends BankCommand {
  @Override
  BankTask task() {
    return new SeedTask();
  }
}
