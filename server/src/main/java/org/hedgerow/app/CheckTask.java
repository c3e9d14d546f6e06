package org.hedgerow.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.store.BankDatabase;

/** Prints a verdict with its findings for each word. */
record CheckTask(
    List<String> words, Optional<String> phonogram, OptionalInt value, List<String> accents)
    implements BankTask {
  CheckTask {
    words = List.copyOf(words);
    accents = List.copyOf(accents);
  }

  @Override
  public int run(BankDatabase bank, PrintWriter out) {
    throw new CommandFailedException("This build can't check words yet.");
  }
}
