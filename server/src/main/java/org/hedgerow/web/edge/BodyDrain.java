package org.hedgerow.web.edge;

import java.time.Duration;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.Callback;

/**
 * Throws away what still comes of a body that is answered already. Most clients see an answer only
 * once they have sent all (RFC 9112, section 9.6).
 */
final class BodyDrain {
  private static final long MAX_BYTES = 64L * 1024 * 1024;
  private static final long MAX_LENGTH = Duration.ofSeconds(10).toNanos();

  private final Request request;
  private final long start = System.nanoTime();
  private long bytes;

  BodyDrain(Request request) {
    this.request = request;
  }

  /** Completes the callback in any case, once the body is over or goes on for too long. */
  void run(Callback end) {
    while (bytes < MAX_BYTES && System.nanoTime() - start < MAX_LENGTH) {
      Content.Chunk chunk = request.read();
      if (chunk == null) {
        request.demand(() -> run(end));
        return;
      }
      bytes += chunk.remaining();
      boolean over = chunk.isLast() || Content.Chunk.isFailure(chunk);
      chunk.release();
      if (over) {
        break;
      }
    }
    end.succeeded();
  }
}
