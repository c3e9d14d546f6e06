package org.hedgerow.store;

import java.util.List;
import org.hedgerow.phonics.AccentCatalogue;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** Reads whole editions of the bank into memory. */
public final class EditionReader {
  private final Jdbi jdbi;

  public EditionReader(BankDatabase bank) {
    this.jdbi = bank.jdbi();
  }

  /**
   * The newest edition, as it was at one moment.
   *
   * @throws IllegalStateException if the bank is empty
   */
  public Edition newest() {
    return jdbi.inTransaction(TransactionIsolationLevel.REPEATABLE_READ, EditionReader::newest);
  }

  private static Edition newest(Handle handle) {
    int number = handle.createQuery("select max(number) from editions").mapTo(Integer.class).one();
    List<AccentCatalogue> accents = new CatalogueReader(handle).read();
    return new Edition(number, accents, new WordReader(handle, number, accents).read());
  }
}
