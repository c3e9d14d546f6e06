package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.editions.EditionReader;

/** A command that looks something up in the bank's words, beside a server or without one. */
abstract class LexiconCommand extends BankCommand {

  /** The task as the options describe it. */
  abstract LexiconTask lexiconTask();

  @Override
  final BankDatabase open(DatabaseOptions options) {
    return options.openToRead();
  }

  @Override
  final BankTask task() {
    LexiconTask task = lexiconTask();
    return (bank, out) -> task.run(lexicon(bank), out, errors());
  }

  private Lexicon lexicon(BankDatabase bank) {
    PrintWriter remarks = errors();
    new SeedTask().runIfEmpty(bank, remarks);
    EditionReader reader = new EditionReader(bank);
    return reader.newest(reader.first().lexicon());
  }
}
