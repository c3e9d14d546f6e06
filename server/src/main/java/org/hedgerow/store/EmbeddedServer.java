package org.hedgerow.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Timer;

/**
 * PostgreSQL run by this process on a persistent folder. It listens on this machine only, on a free
 * port, and trusts everybody on the machine: for a machine shared with strangers give the address
 * of a server of your own.
 */
final class EmbeddedServer implements AutoCloseable {
  static final String DATABASE = "hedgerow";
  static final String USER = "postgres";

  private final EmbeddedPostgres postgres;
  private final DataFolder folder;
  private final FolderLock lock;
  private final Timer reserve;

  private EmbeddedServer(EmbeddedPostgres postgres, DataFolder folder, FolderLock lock) {
    this.postgres = postgres;
    this.folder = folder;
    this.lock = lock;
    this.reserve = folder.ballast().watch();
  }

  /**
   * Starts the server on a folder, whatever state an earlier run left it in.
   *
   * @param engine where PostgreSQL's programs are unpacked, if not in the folder
   * @throws DatabaseUnavailableException if the folder can't be used or PostgreSQL won't start
   */
  static EmbeddedServer start(Path dataFolder, Optional<Path> engine) {
    DataFolder folder = DataFolder.open(dataFolder, engine);
    FolderLock lock = FolderLock.tryTake(folder).orElseThrow(() -> inUse(folder));
    try {
      return startLocked(folder, lock);
    } catch (RuntimeException failure) {
      lock.close();
      throw failure;
    }
  }

  /** The server that another process runs on a folder; empty if none does. */
  static Optional<DatabaseAddress> running(Path dataFolder) {
    DataFolder folder = DataFolder.open(dataFolder, Optional.empty());
    Optional<FolderLock> lock = FolderLock.tryTake(folder);
    if (lock.isPresent()) {
      lock.get().close();
      return Optional.empty();
    }
    return PostmasterFile.read(folder.cluster())
        .map(postmaster -> DatabaseAddress.local(postmaster.port(), DATABASE, USER));
  }

  private static DatabaseUnavailableException inUse(DataFolder folder) {
    return new DatabaseUnavailableException(
        "The data folder %s is in use by another Hedgerow%s. Stop that one, or choose another folder with --data."
            .formatted(folder.root(), FolderLock.holder(folder)));
  }

  private static EmbeddedServer startLocked(DataFolder folder, FolderLock lock) {
    OrphanedServer.stopOn(folder);
    folder.ballast().giveUpIfNeeded();
    folder.sweep();
    folder.markFirstStart();
    EmbeddedServer server = new EmbeddedServer(new ServerStart(folder).run(), folder, lock);
    try {
      folder.protectEngine();
      server.createDatabase();
      folder.clearFirstStartMark();
      return server;
    } catch (RuntimeException failure) {
      server.close();
      throw failure;
    }
  }

  private void createDatabase() {
    try (Connection connection = postgres.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      if (!exists(statement)) {
        statement.execute("create database " + DATABASE);
      }
    } catch (SQLException problem) {
      throw new DatabaseUnavailableException(
          "The embedded database can't be set up: " + problem.getMessage(), problem);
    }
  }

  private static boolean exists(Statement statement) throws SQLException {
    try (ResultSet found =
        statement.executeQuery("select 1 from pg_database where datname = '" + DATABASE + "'")) {
      return found.next();
    }
  }

  /** The room on the folder's disk. */
  StorageRoom room() {
    return StorageRoom.of(folder.ballast());
  }

  DatabaseAddress address() {
    return DatabaseAddress.local(postgres.getPort(), DATABASE, USER);
  }

  /** Stops the server in an orderly way and gives the folder back. */
  @Override
  public void close() {
    reserve.cancel();
    try {
      postgres.close();
      OrphanedServer.stopOn(folder); // if it took longer than the library waits
    } catch (IOException problem) {
      throw DataFolder.unusable(folder.root(), problem);
    } finally {
      lock.close();
    }
  }
}
