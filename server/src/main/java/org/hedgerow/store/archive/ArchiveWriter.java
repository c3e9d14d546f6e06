package org.hedgerow.store.archive;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.hedgerow.store.BankDatabase;
import org.hedgerow.store.database.CopyReader;
import org.hedgerow.store.database.Digests;
import org.hedgerow.store.database.PrivateFiles;
import org.hedgerow.store.database.TableColumns;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** Writes the whole bank, as it is at one moment, into a ZIP file of JSON Lines. */
public final class ArchiveWriter {
  private final Jdbi jdbi;
  private final String schema;

  public ArchiveWriter(BankDatabase bank) {
    this.jdbi = bank.patient();
    this.schema = bank.migration().version();
  }

  /**
   * The file is there only once it is whole, and only its owner can read it.
   *
   * @param people whether to say who people are, and what was done; never with their passwords
   * @param made when
   * @param table told the name of each table before it is written
   * @return how many rows it holds
   * @throws UnusableArchiveException if the file is there already, or can't be written
   */
  public long write(Path file, boolean people, Instant made, Consumer<String> table) {
    if (Files.exists(file)) {
      throw new UnusableArchiveException(
          "%s is there already. Name a file that isn’t, or move that one.".formatted(file));
    }
    Path unfinished = file.resolveSibling(file.getFileName() + ".unfinished");
    try {
      try (OutputStream out = new BufferedOutputStream(PrivateFiles.newOutputStream(unfinished))) {
        long rows =
            jdbi.inTransaction(
                TransactionIsolationLevel.REPEATABLE_READ,
                handle -> write(handle, out, people, made, table));
        out.flush();
        Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        return rows;
      } finally {
        Files.deleteIfExists(unfinished);
      }
    } catch (FileAlreadyExistsException problem) {
      throw new UnusableArchiveException("%s is there already.".formatted(file), problem);
    } catch (IOException | UncheckedIOException problem) {
      throw new UnusableArchiveException(
          "%s can’t be written (%s). Is there room on the disk, and may you write there?"
              .formatted(file, problem.getMessage()),
          problem);
    }
  }

  private long write(
      Handle handle, OutputStream out, boolean people, Instant made, Consumer<String> told) {
    try {
      ZipOutputStream zip = new ZipOutputStream(out, UTF_8);
      List<ArchiveManifest.File> files = new ArrayList<>();
      for (ArchivedTable table : ArchivedTable.all(people)) {
        told.accept(table.name());
        files.add(write(handle, zip, table));
      }
      zip.putNextEntry(new ZipEntry(ArchiveManifest.FILE));
      zip.write(
          ArchiveJson.bytes(
              new ArchiveManifest(
                  ArchiveManifest.FORMAT, schema, newest(handle), made, people, files)));
      zip.closeEntry();
      zip.finish();
      return files.stream().mapToLong(ArchiveManifest.File::rows).sum();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static ArchiveManifest.File write(Handle handle, ZipOutputStream zip, ArchivedTable table)
      throws IOException {
    MessageDigest digest = Digests.sha256();
    zip.putNextEntry(new ZipEntry(table.file()));
    OutputStream lines = new DigestOutputStream(zip, digest);
    long rows = 0;
    try (CopyReader reader =
        CopyReader.of(handle, table.query(TableColumns.of(handle, table.name())))) {
      while (reader.next()) {
        lines.write(reader.text().getBytes(UTF_8));
        lines.write('\n');
        rows++;
      }
    }
    zip.closeEntry();
    return new ArchiveManifest.File(table.file(), rows, HexFormat.of().formatHex(digest.digest()));
  }

  private static int newest(Handle handle) {
    return handle
        .createQuery("select coalesce(max(number), 0) from editions")
        .mapTo(Integer.class)
        .one();
  }
}
