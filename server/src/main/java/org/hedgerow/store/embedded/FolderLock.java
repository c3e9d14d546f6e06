package org.hedgerow.store.embedded;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Optional;

/**
 * Keeps a second process off a data folder. The operating system lets go of it when the process
 * ends, however that is.
 */
final class FolderLock implements AutoCloseable {
  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /** Empty if another process, or another bank of this one, holds the folder. */
  static Optional<FolderLock> tryTake(DataFolder folder) {
    try {
      FileChannel channel = FileChannel.open(folder.lock(), CREATE, WRITE);
      if (!locks(channel)) {
        channel.close();
        return Optional.empty();
      }
      writeProcess(channel);
      return Optional.of(new FolderLock(channel));
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    }
  }

  /**
   * The process that holds the folder, in words to follow its mention; nothing where it can't be
   * read.
   */
  static String holder(DataFolder folder) {
    try {
      return " (process %s)".formatted(Files.readString(folder.lock()).strip());
    } catch (IOException unreadable) {
      return "";
    }
  }

  private static boolean locks(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException heldByThisProcess) {
      return false;
    }
  }

  private static void writeProcess(FileChannel channel) throws IOException {
    byte[] process = (ProcessHandle.current().pid() + "\n").getBytes(StandardCharsets.US_ASCII);
    channel.truncate(0);
    while (channel.position() < process.length) {
      channel.write(ByteBuffer.wrap(process));
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException problem) {
      // The lock goes with the process at the latest.
    }
  }
}
