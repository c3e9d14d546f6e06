package org.hedgerow.web;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.UnknownHostException;

/**
 * Where the server listens.
 *
 * @param host a host name or IP address of this machine
 * @param port a TCP port; 0 for any that is free
 */
public record ListeningAddress(String host, int port) {

  /**
   * Finds out in time, before a long start, whether anything stands in the way.
   *
   * @throws ListeningException if the server couldn't listen here now
   */
  public void requireFree() {
    try (ServerSocket socket = new ServerSocket()) {
      socket.setReuseAddress(true);
      socket.bind(new InetSocketAddress(InetAddress.getByName(host), port));
    } catch (UnknownHostException problem) {
      throw new ListeningException(
          "This machine has no address %s. Check --host.".formatted(host), problem);
    } catch (IOException problem) {
      throw failure(problem);
    }
  }

  ListeningException failure(Throwable problem) {
    return new ListeningException(words(problem), problem);
  }

  private String words(Throwable problem) {
    String message = String.valueOf(problem.getMessage());
    if (message.contains("Permission denied")) {
      return "This user may not listen on port %d. Choose one above 1023 with --port."
          .formatted(port);
    }
    if (message.contains("Cannot assign")) {
      return "This machine has no address %s. Check --host.".formatted(host);
    }
    if (problem instanceof BindException) {
      return "Port %d on %s is in use. Stop the other program, or choose another port with --port."
          .formatted(port, host);
    }
    return "The server can't listen on port %d of %s: %s".formatted(port, host, message);
  }
}
