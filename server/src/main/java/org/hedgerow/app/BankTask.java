package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.store.BankDatabase;

/** What a command does once the bank's database is open. */
@FunctionalInterface
interface BankTask {
  /** Returns the exit code. */
  int run(BankDatabase bank, PrintWriter out);
}
