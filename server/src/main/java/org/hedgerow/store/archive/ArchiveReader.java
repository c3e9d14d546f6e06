package org.hedgerow.store.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.CopyWriter;
import org.hedgerow.store.database.TableColumns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** Puts an archive into an empty bank, wholly or not at all. */
public final class ArchiveReader {
  private final BankDatabase bank;
  private final Jdbi jdbi;
  private final int schema;

  public ArchiveReader(BankDatabase bank) {
    this.bank = bank;
    this.jdbi = bank.patient();
    this.schema = Integer.parseInt(bank.migration().version());
  }

  /**
   * @param table told the name of each table before it is read
   * @return how many rows it holds
   * @throws UnusableArchiveException if it is no archive of ours, holds what no bank does, is of a
   *     newer schema, or if the bank isn't empty
   */
  public long read(Path file, Consumer<String> table) {
    try (Archive archive = Archive.open(file)) {
      int version = version(archive, file);
      jdbi.useTransaction(ArchiveReader::requireEmpty);
      ArchiveCheck.run(archive);
      long rows = version < schema ? readOlder(archive, table) : readPresent(archive, table);
      LoadedTables.settle(jdbi);
      return rows;
    } catch (IOException | UncheckedIOException problem) {
      throw new UnusableArchiveException(
          "%s can’t be read (%s). Is it an archive that export made, and whole?"
              .formatted(file, problem.getMessage()),
          problem);
    } catch (JdbiException problem) {
      throw new UnusableArchiveException(
          "%s doesn’t fit into the bank, which stays empty: its rows contradict each other or were changed by hand."
              .formatted(file),
          problem);
    }
  }

  private int version(Archive archive, Path file) {
    String version = archive.manifest().schema();
    if (!version.matches("[1-9][0-9]{0,3}") || Integer.parseInt(version) > schema) {
      throw new UnusableArchiveException(
          "%s was made with schema %s; this program knows schemas up to %d. Import it with the Hedgerow that made it, or a newer one."
              .formatted(file, version, schema));
    }
    return Integer.parseInt(version);
  }

  private long readPresent(Archive archive, Consumer<String> told) {
    return jdbi.inTransaction(
        handle -> {
          requireEmpty(handle);
          return read(handle, archive, told);
        });
  }

  /** The program that comes next needn't know what tables were like before. */
  private long readOlder(Archive archive, Consumer<String> told) {
    try (StagingSchema older =
        StagingSchema.make(bank.dataSource(), jdbi, archive.manifest().schema())) {
      long rows =
          jdbi.inTransaction(
              handle -> {
                older.use(handle);
                return read(handle, archive, told);
              });
      older.bringUpToDate();
      jdbi.useTransaction(
          handle -> {
            requireEmpty(handle);
            older.copy(handle);
          });
      return rows;
    }
  }

  private static long read(Handle handle, Archive archive, Consumer<String> told) {
    handle.execute("set constraints all deferred");
    handle.execute("create temporary table archived (line text not null) on commit drop");
    long rows = 0;
    for (ArchivedTable table : archive.tables()) {
      told.accept(table.name());
      rows += read(handle, archive, table);
    }
    return rows;
  }

  private static void requireEmpty(Handle handle) {
    handle.execute("lock table editions, accounts in share row exclusive mode");
    boolean empty =
        handle
            .createQuery(
                "select not exists (select from editions) and not exists (select from accounts)")
            .mapTo(Boolean.class)
            .one();
    if (!empty) {
      throw new UnusableArchiveException(
          "The bank isn’t empty. Import into a new data folder or a new database.");
    }
  }

  private static long read(Handle handle, Archive archive, ArchivedTable table) {
    handle.execute("truncate archived");
    long rows = copy(handle, archive, table);
    if (table.name().equals("centre")) {
      handle.execute("delete from centre"); // the migrations make its row
    }
    insert(handle, table);
    return rows;
  }

  private static long copy(Handle handle, Archive archive, ArchivedTable table) {
    try (CopyWriter writer = CopyWriter.into(handle, "archived (line)")) {
      return archive.read(table, (line, number) -> writer.text(line).endRow());
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static void insert(Handle handle, ArchivedTable table) {
    List<String> columns = TableColumns.of(handle, table.name());
    handle.execute(
        """
        insert into %1$s (%2$s) overriding system value
        select %2$s from archived, json_populate_record(null::%1$s, line::json)
        """
            .formatted(table.name(), String.join(", ", columns)));
    if (TableColumns.hasCountedIds(handle, table.name())) {
      TableColumns.countOn(handle, table.name());
    }
  }
}
