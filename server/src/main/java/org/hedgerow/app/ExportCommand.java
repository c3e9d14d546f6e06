package org.hedgerow.app;

import java.nio.file.Path;
import java.time.Instant;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.archive.ArchiveWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
    name = "export",
    description =
        "Writes the whole bank into an archive: words with their history, contributions and decisions.")
final class ExportCommand extends BankCommand {
  @Parameters(paramLabel = "FILE", description = "The archive, a ZIP file of JSON Lines.")
  private Path file = Path.of("");

  @Option(
      names = "--with-people",
      description =
          "Also says who people are, and the record of what they did. Without, they are Person 1, Person 2 and so on. Passwords and links are never in it.")
  private boolean withPeople;

  @Override
  BankTask task() {
    return (bank, out) -> {
      long rows =
          new ArchiveWriter(bank)
              .write(file, withPeople, Instant.now(), table -> out.println("Writing " + table));
      out.println("%s holds the bank: %,d rows.".formatted(file, rows));
      return 0;
    };
  }

  /** Also while a server runs. */
  @Override
  BankDatabase open(DatabaseOptions options) {
    return options.openToRead();
  }
}
