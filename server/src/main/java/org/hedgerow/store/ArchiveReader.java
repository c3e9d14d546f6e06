package org.hedgerow.store;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** Puts an archive into an empty bank, wholly or not at all. */
public final class ArchiveReader {
  private static final int LONGEST_MANIFEST = 1 << 20;

  private final Jdbi jdbi;
  private final String schema;

  public ArchiveReader(BankDatabase bank) {
    this.jdbi = bank.patient();
    this.schema = bank.migration().version();
  }

  /**
   * @param table told the name of each table before it is read
   * @return how many rows it holds
   * @throws UnusableArchiveException if it is no archive of ours, is damaged or of another schema,
   *     or if the bank isn't empty
   */
  public long read(Path file, Consumer<String> table) {
    try (ZipFile zip = new ZipFile(file.toFile(), UTF_8)) {
      ArchiveManifest manifest = manifest(zip, file);
      long rows = jdbi.inTransaction(handle -> read(handle, zip, manifest, table));
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

  private ArchiveManifest manifest(ZipFile zip, Path file) throws IOException {
    ZipEntry entry = zip.getEntry(ArchiveManifest.FILE);
    if (entry == null) {
      throw new UnusableArchiveException(
          "%s has no manifest: it is no archive of ours.".formatted(file));
    }
    ArchiveManifest manifest =
        ArchiveJson.read(zip.getInputStream(entry).readNBytes(LONGEST_MANIFEST));
    if (!manifest.format().equals(ArchiveManifest.FORMAT)) {
      throw new UnusableArchiveException(
          "%s is of the format %s; this program reads %s."
              .formatted(file, manifest.format(), ArchiveManifest.FORMAT));
    }
    if (!manifest.schema().equals(schema)) {
      throw new UnusableArchiveException(
          "%s was made with schema %s; this program has schema %s. Import it with the version that made it, then start this one on that database."
              .formatted(file, manifest.schema(), schema));
    }
    return manifest;
  }

  private static long read(
      Handle handle, ZipFile zip, ArchiveManifest manifest, Consumer<String> told) {
    requireEmpty(handle);
    handle.execute("set constraints all deferred");
    handle.execute("delete from centre");
    handle.execute("create temporary table archived (line text not null) on commit drop");
    long rows = 0;
    for (ArchivedTable table : ArchivedTable.all(manifest.people())) {
      told.accept(table.name());
      rows += read(handle, zip, manifest, table);
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

  private static long read(
      Handle handle, ZipFile zip, ArchiveManifest manifest, ArchivedTable table) {
    ArchiveManifest.File file =
        manifest.file(table.file()).orElseThrow(() -> damaged(table, "is missing"));
    ZipEntry entry =
        Optional.ofNullable(zip.getEntry(table.file()))
            .orElseThrow(() -> damaged(table, "is missing"));
    long rows = copy(handle, zip, entry, file, table);
    if (rows != file.rows()) {
      throw damaged(table, "has %d rows, not %d".formatted(rows, file.rows()));
    }
    insert(handle, table);
    return rows;
  }

  private static long copy(
      Handle handle, ZipFile zip, ZipEntry entry, ArchiveManifest.File file, ArchivedTable table) {
    MessageDigest digest = Digests.sha256();
    long rows = 0;
    handle.execute("truncate archived");
    try (BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(
                    new DigestInputStream(zip.getInputStream(entry), digest), UTF_8));
        CopyWriter writer = CopyWriter.into(handle, "archived (line)")) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        writer.text(line).endRow();
        rows++;
      }
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
    if (!HexFormat.of().formatHex(digest.digest()).equals(file.sha256())) {
      throw damaged(table, "was changed after it was written");
    }
    return rows;
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

  private static UnusableArchiveException damaged(ArchivedTable table, String how) {
    return new UnusableArchiveException(
        "The archive is damaged: %s %s. The bank stays empty.".formatted(table.file(), how));
  }
}
