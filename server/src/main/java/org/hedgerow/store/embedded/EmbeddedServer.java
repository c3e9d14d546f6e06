package org.hedgerow.store.embedded;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.Timer;
import java.util.function.Consumer;
import org.hedgerow.store.database.ConnectionProbe;
import org.hedgerow.store.database.DamagedData;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.database.DatabaseUnavailableException;
import org.hedgerow.store.database.StorageRoom;
import org.jspecify.annotations.Nullable;

/**
 * PostgreSQL run by this process on a persistent folder. It listens on this machine only, on a free
 * port that it keeps while the process lives, and lets in whoever knows the folder's password.
 */
public final class EmbeddedServer implements AutoCloseable {
  public static final String DATABASE = "hedgerow";
  public static final String USER = "postgres";

  private static final String WRONG_PASSWORD = "28P01";

  private final DataFolder folder;
  private final FolderLock lock;
  private final Timer reserve;
  private final Cluster cluster;
  private final int port;
  private final String password;
  private @Nullable ServerSupervisor watch;

  private EmbeddedServer(
      DataFolder folder, FolderLock lock, Cluster cluster, int port, String password) {
    this.folder = folder;
    this.lock = lock;
    this.cluster = cluster;
    this.port = port;
    this.password = password;
    this.reserve = folder.ballast().watch();
  }

  /**
   * Starts the server on a folder, whatever state an earlier run left it in.
   *
   * @param engine where PostgreSQL's programs are unpacked, if not in the folder
   * @throws DatabaseUnavailableException if the folder can't be used or PostgreSQL won't start
   */
  public static EmbeddedServer start(Path dataFolder, Optional<Path> engine) {
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
  public static Optional<DatabaseAddress> running(Path dataFolder) {
    DataFolder folder = DataFolder.open(dataFolder, Optional.empty());
    Optional<FolderLock> lock = FolderLock.tryTake(folder);
    if (lock.isPresent()) {
      lock.get().close();
      return Optional.empty();
    }
    return PostmasterFile.read(folder.cluster())
        .map(
            postmaster ->
                DatabaseAddress.local(
                    postmaster.port(), DATABASE, USER, ClusterAccess.password(folder)));
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
    Cluster cluster = new Cluster(folder, PostgresBinaries.unpackedIn(folder.engine()));
    ClusterAccess access = new ClusterAccess(folder, cluster);
    int port = freePort();
    try {
      return started(folder, lock, cluster, port, access.prepare());
    } catch (DatabaseUnavailableException failure) {
      if (!isWrongPassword(failure)) {
        throw failure;
      }
      return started(folder, lock, cluster, port, access.renew()); // as after restoring a backup
    }
  }

  private static EmbeddedServer started(
      DataFolder folder, FolderLock lock, Cluster cluster, int port, String password) {
    EmbeddedServer server = new EmbeddedServer(folder, lock, cluster, port, password);
    try {
      cluster.start(port);
      server.createDatabase();
      folder.clearFirstStartMark();
      return server;
    } catch (RuntimeException failure) {
      server.stop();
      throw failure;
    }
  }

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException problem) {
      throw new DatabaseUnavailableException(
          "The embedded database finds no free port: " + problem.getMessage(), problem);
    }
  }

  private void createDatabase() {
    try (Connection connection = ConnectionProbe.connect(address("postgres"));
        Statement statement = connection.createStatement()) {
      if (!exists(statement)) {
        statement.execute("create database " + DATABASE);
      }
    } catch (SQLException problem) {
      throw DamagedData.in(problem)
          .map(damage -> new DatabaseUnavailableException(damage, problem))
          .orElseGet(
              () ->
                  new DatabaseUnavailableException(
                      "The embedded database can't be set up: %s. If the data folder is damaged, restore a backup."
                          .formatted(firstLine(problem)),
                      problem));
    }
  }

  private static String firstLine(SQLException problem) {
    return String.valueOf(problem.getMessage()).lines().findFirst().orElse("");
  }

  private static boolean isWrongPassword(DatabaseUnavailableException failure) {
    return failure.getCause() instanceof SQLException cause
        && WRONG_PASSWORD.equals(cause.getSQLState());
  }

  private static boolean exists(Statement statement) throws SQLException {
    try (ResultSet found =
        statement.executeQuery("select 1 from pg_database where datname = '" + DATABASE + "'")) {
      return found.next();
    }
  }

  /** The room on the folder's disk. */
  public StorageRoom room() {
    return StorageRoom.of(folder.ballast());
  }

  public DatabaseAddress address() {
    return address(DATABASE);
  }

  private DatabaseAddress address(String database) {
    return DatabaseAddress.local(port, database, USER, Optional.of(password));
  }

  /**
   * Starts PostgreSQL again, at the same address, whenever it ends by itself, until this is closed.
   *
   * @param lost told why, in a sentence, when that doesn't succeed
   */
  public void keepRunning(Consumer<String> lost) {
    watch =
        ServerSupervisor.over(this::runs, this::startAgain, lost, ServerSupervisor.Times.DEFAULT);
  }

  private void startAgain() {
    folder.ballast().giveUpIfNeeded();
    cluster.start(port);
  }

  private boolean runs() {
    return OrphanedServer.process(folder).isPresent();
  }

  /** Stops the server in an orderly way and gives the folder back. */
  @Override
  public void close() {
    try {
      if (watch != null) {
        watch.close();
      }
      stop();
    } finally {
      lock.close();
    }
  }

  private void stop() {
    reserve.cancel();
    try {
      if (runs()) {
        cluster.stop();
      }
    } finally {
      OrphanedServer.stopOn(folder); // if it takes longer than pg_ctl waits
    }
  }
}
