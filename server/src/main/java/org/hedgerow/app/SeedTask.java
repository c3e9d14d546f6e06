package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.store.BankDatabase;

/** Fills an empty bank from the seed lexicon. */
final class SeedTask implements BankTask {
  @Override
  public int run(BankDatabase bank, PrintWriter out) {
    throw new CommandFailedException("This build has no seed lexicon yet.");
  }

  /** What a server does at its start. */
  void runIfEmpty(BankDatabase bank, PrintWriter out) {}
}
