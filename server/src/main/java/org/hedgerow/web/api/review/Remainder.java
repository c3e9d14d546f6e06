package org.hedgerow.web.api.review;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;

/**
 * What is still coming of a body that nobody wants. Most clients see an answer only once they have
 * sent all (RFC 9112, section 9.6), so it is thrown away as it comes, for a while.
 */
final class Remainder {
  private static final long MOST_BYTES = 64L * 1024 * 1024;
  private static final long LONGEST = Duration.ofSeconds(10).toNanos();
  private static final long LONGEST_SILENCE = Duration.ofMillis(300).toNanos();
  private static final int MOMENT_MILLISECONDS = 10;

  private Remainder() {}

  /** Never waits for long for what doesn't come. */
  static void discard(InputStream body) {
    try {
      byte[] buffer = new byte[65_536];
      long bytes = 0;
      long start = System.nanoTime();
      long heard = start;
      while (bytes < MOST_BYTES && System.nanoTime() - start < LONGEST) {
        int available = body.available();
        if (available > 0) {
          bytes += Math.max(0, body.read(buffer, 0, Math.min(available, buffer.length)));
          heard = System.nanoTime();
        } else if (System.nanoTime() - heard < LONGEST_SILENCE) {
          Thread.sleep(MOMENT_MILLISECONDS);
        } else {
          return;
        }
      }
    } catch (IOException gone) {
      // Then nobody waits for the answer either.
    } catch (InterruptedException stopping) {
      Thread.currentThread().interrupt();
    }
  }
}
