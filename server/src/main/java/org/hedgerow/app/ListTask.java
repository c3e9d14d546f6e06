package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.OptionalInt;
import org.hedgerow.store.BankDatabase;

/** Prints the words for one value of a phonogram. */
record ListTask(String phonogram, OptionalInt value, String accent, OptionalInt limit)
    implements BankTask {
  @Override
  public int run(BankDatabase bank, PrintWriter out) {
    throw new CommandFailedException("This build can't list words yet.");
  }
}
