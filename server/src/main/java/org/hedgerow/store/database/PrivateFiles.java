package org.hedgerow.store.database;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Files and folders that only their owner may look into, from their first byte on. Where the file
 * system knows no POSIX permissions they inherit those of their folder.
 */
public final class PrivateFiles {
  private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
  private static final Set<PosixFilePermission> FOLDER =
      PosixFilePermissions.fromString("rwx------");

  private PrivateFiles() {}

  /** Writes a text through to the disk. */
  public static void write(Path file, String text) throws IOException {
    try (FileChannel channel = open(file)) {
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(UTF_8));
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  public static OutputStream newOutputStream(Path file) throws IOException {
    return Channels.newOutputStream(open(file));
  }

  private static FileChannel open(Path file) throws IOException {
    Files.deleteIfExists(file); // it may have other permissions
    return FileChannel.open(file, Set.of(CREATE, WRITE, TRUNCATE_EXISTING), attributes(FILE));
  }

  public static void createDirectory(Path folder) throws IOException {
    Files.createDirectory(folder, attributes(FOLDER));
  }

  /** Closes a folder that is there already. */
  public static void close(Path folder) throws IOException {
    if (knowsPermissions()) {
      Files.setPosixFilePermissions(folder, FOLDER);
    }
  }

  private static FileAttribute<?>[] attributes(Set<PosixFilePermission> permissions) {
    return knowsPermissions()
        ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
        : new FileAttribute<?>[0];
  }

  private static boolean knowsPermissions() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
  }
}
