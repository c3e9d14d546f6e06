package org.hedgerow.app;

import java.io.PrintWriter;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.SchemaMigration;
import picocli.CommandLine.Command;

@Command(
    name = "migrate",
    description = "Brings the database's schema up to date and ends. The server does so by itself.")
final class MigrateCommand extends BankCommand {
  @Override
  BankTask task() {
    return MigrateCommand::report;
  }

  private static int report(BankDatabase bank, PrintWriter out) {
    SchemaMigration migration = bank.migration();
    out.println(
        migration.applied() == 0
            ? "The schema is up to date: version %s.".formatted(migration.version())
            : "Migrations applied: %d. The schema is now version %s."
                .formatted(migration.applied(), migration.version()));
    return 0;
  }
}
