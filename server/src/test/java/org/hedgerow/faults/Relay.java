package org.hedgerow.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A way to a port of this machine that can be cut and mended. */
final class Relay implements AutoCloseable {
  private final int target;
  private final int port;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private ServerSocket listening;

  /**
   * @param target the port to lead to
   */
  Relay(int target) throws IOException {
    this.target = target;
    this.listening = listen(0);
    this.port = listening.getLocalPort();
  }

  int port() {
    return port;
  }

  private ServerSocket listen(int where) throws IOException {
    ServerSocket socket = new ServerSocket();
    socket.setReuseAddress(true);
    socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), where));
    start(() -> accept(socket));
    return socket;
  }

  /** Breaks every connection and refuses new ones. */
  void cut() throws IOException {
    listening.close();
    for (Socket socket : open) {
      socket.close();
    }
    open.clear();
  }

  void mend() throws IOException {
    listening = listen(port);
  }

  private void accept(ServerSocket socket) {
    while (!socket.isClosed()) {
      try {
        Socket from = socket.accept();
        Socket to = new Socket(InetAddress.getLoopbackAddress(), target);
        open.add(from);
        open.add(to);
        start(() -> pump(from, to));
        start(() -> pump(to, from));
      } catch (IOException gone) {
        Writing.pause(1);
      }
    }
  }

  private void pump(Socket from, Socket to) {
    try (from;
        to) {
      from.getInputStream().transferTo(to.getOutputStream());
    } catch (IOException gone) {
      open.remove(from);
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "relay");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() {
    try {
      cut();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
