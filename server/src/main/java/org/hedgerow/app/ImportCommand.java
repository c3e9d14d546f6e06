package org.hedgerow.app;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hedgerow.store.archive.ArchiveReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(
    name = "import",
    description =
        "Puts an archive that export made into an empty bank, wholly or not at all. People need a new link before they can sign in: account link NAME.")
final class ImportCommand extends BankCommand {
  @Parameters(paramLabel = "FILE", description = "The archive.")
  private Path file = Path.of("");

  @Override
  BankTask task() {
    if (!Files.isRegularFile(file)) {
      throw wrongUsage("%s is no file".formatted(file));
    }
    return (bank, out) -> {
      long rows = new ArchiveReader(bank).read(file, table -> out.println("Reading " + table));
      out.println("The bank holds what %s held: %,d rows.".formatted(file, rows));
      return 0;
    };
  }
}
