package org.hedgerow.store.archive;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.hedgerow.store.database.Digests;
import org.jspecify.annotations.Nullable;

/** An archive opened for reading. */
final class Archive implements AutoCloseable {
  private static final int MAX_MANIFEST = 1 << 20;

  /** Two characters for each byte of a picture of 5 MB, and what is beside it. */
  private static final int MAX_LINE_WITH_PICTURE = 12_000_000;

  private static final int MAX_LINE = 1_000_000;

  private final ZipFile zip;
  private final ArchiveManifest manifest;

  private Archive(ZipFile zip, ArchiveManifest manifest) {
    this.zip = zip;
    this.manifest = manifest;
  }

  /**
   * @throws UnusableArchiveException if it is no archive of ours
   */
  static Archive open(Path file) throws IOException {
    ZipFile zip = new ZipFile(file.toFile(), UTF_8);
    try {
      return new Archive(zip, manifest(zip, file));
    } catch (IOException | RuntimeException problem) {
      zip.close();
      throw problem;
    }
  }

  private static ArchiveManifest manifest(ZipFile zip, Path file) throws IOException {
    ZipEntry entry = zip.getEntry(ArchiveManifest.FILE);
    if (entry == null) {
      throw new UnusableArchiveException(
          "%s has no manifest: it is no archive of ours.".formatted(file));
    }
    ArchiveManifest manifest = ArchiveJson.read(zip.getInputStream(entry).readNBytes(MAX_MANIFEST));
    if (!manifest.format().equals(ArchiveManifest.FORMAT)) {
      throw new UnusableArchiveException(
          "%s is of the format %s; this program reads %s."
              .formatted(file, manifest.format(), ArchiveManifest.FORMAT));
    }
    return manifest;
  }

  ArchiveManifest manifest() {
    return manifest;
  }

  /** The tables that it holds, in the order in which they are to be read. */
  List<ArchivedTable> tables() {
    return ArchivedTable.all(manifest.people()).stream().filter(this::holds).toList();
  }

  /** Tables that came later than the archive are left as they are in a new bank. */
  private boolean holds(ArchivedTable table) {
    return manifest.file(table.file()).isPresent() || !table.isLater();
  }

  /** What is done with each line. */
  interface LineUse {
    void accept(String line, long number) throws IOException;
  }

  /**
   * Reads a table's lines.
   *
   * @return how many there are
   * @throws UnusableArchiveException if they aren't those which the manifest tells of
   */
  long read(ArchivedTable table, LineUse use) throws IOException {
    ArchiveManifest.File file = manifest.file(table.file()).orElseThrow(() -> missing(table));
    ZipEntry entry =
        Optional.ofNullable(zip.getEntry(table.file())).orElseThrow(() -> missing(table));
    MessageDigest digest = Digests.sha256();
    InputStream in = new DigestInputStream(zip.getInputStream(entry), digest);
    try (BoundedLines lines = new BoundedLines(table.file(), in, maxLine(table))) {
      for (@Nullable String line = lines.next(); line != null; line = lines.next()) {
        if (lines.number() > file.rows()) {
          throw damaged(table, "has more than the %d rows that it should".formatted(file.rows()));
        }
        use.accept(line, lines.number());
      }
      if (!HexFormat.of().formatHex(digest.digest()).equals(file.sha256())) {
        throw damaged(table, "was changed after it was written");
      }
      if (lines.number() < file.rows()) {
        throw damaged(table, "has %d rows, not %d".formatted(lines.number(), file.rows()));
      }
      return lines.number();
    }
  }

  private static int maxLine(ArchivedTable table) {
    return table.holdsPictures() ? MAX_LINE_WITH_PICTURE : MAX_LINE;
  }

  private static UnusableArchiveException missing(ArchivedTable table) {
    return damaged(table, "is missing");
  }

  private static UnusableArchiveException damaged(ArchivedTable table, String how) {
    return UnusableArchiveException.damaged(table.file(), how);
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }
}
