package org.hedgerow.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import org.hedgerow.store.database.DatabaseAddress;
import org.hedgerow.store.embedded.EmbeddedServer;

/**
 * A database whose PostgreSQL can be stopped and started again. Its address stays: a small relay
 * stands before it, since PostgreSQL comes back on another port.
 */
public final class StoppableDatabase implements AutoCloseable {
  private final Path folder;
  private final ServerSocket relay;
  private volatile EmbeddedServer server;
  private volatile boolean paused;
  private final BankDatabase bank;

  private StoppableDatabase(Path folder) throws IOException {
    this.folder = folder;
    this.relay = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    this.server = run();
    start("relay", this::accept);
    this.bank =
        BankDatabase.external(
            DatabaseAddress.local(
                relay.getLocalPort(),
                EmbeddedServer.DATABASE,
                EmbeddedServer.USER,
                server.address().password()));
  }

  /** In an empty folder. */
  public static StoppableDatabase start(Path folder) throws IOException {
    return new StoppableDatabase(folder);
  }

  private EmbeddedServer run() {
    return EmbeddedServer.start(folder, Optional.of(TestServer.engine()));
  }

  public BankDatabase bank() {
    return bank;
  }

  public void stop() {
    server.close();
  }

  /** As SIGSTOP does: connections stay and can be made, but nothing comes back. */
  public void pause() {
    paused = true;
  }

  public void resume() {
    paused = false;
  }

  public void startAgain() {
    server = run();
  }

  private void accept() {
    while (!relay.isClosed()) {
      try {
        relay(relay.accept());
      } catch (IOException closed) {
        return;
      }
    }
  }

  private void relay(Socket client) throws IOException {
    try {
      Socket database = new Socket(InetAddress.getLoopbackAddress(), port());
      start("there", () -> pump(client, database));
      start("back", () -> pump(database, client));
    } catch (IOException | RuntimeException down) {
      client.close();
    }
  }

  private int port() {
    String url = server.address().url();
    return Integer.parseInt(url.replaceAll(".*:([0-9]+)/.*", "$1"));
  }

  private static void start(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  private void pump(Socket from, Socket to) {
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      byte[] part = new byte[8192];
      for (int length = in.read(part); length >= 0; length = in.read(part)) {
        awaitResumption();
        out.write(part, 0, length);
      }
    } catch (IOException gone) {
      return;
    }
  }

  private void awaitResumption() {
    while (paused && !relay.isClosed()) {
      LockSupport.parkNanos(10_000_000);
    }
  }

  @Override
  public void close() {
    bank.close();
    try {
      relay.close();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } finally {
      server.close();
    }
  }
}
