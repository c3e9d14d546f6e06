package org.hedgerow.web.edge;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.thread.Invocable;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * A body while it comes, without a thread that waits for it. Its bytes are copied: whoever sends
 * them one by one would otherwise hold a network buffer with each.
 */
final class IncomingBody implements Invocable.Task, MemoryBudget.Held {
  /** From then on, the average rate counts. */
  private static final Duration GRACE = Duration.ofSeconds(10);

  /** Slower than any connection that a page could be used over. */
  private static final long MIN_BYTES_PER_SECOND = 2_000;

  private static final double NANOSECONDS_IN_SECOND = 1e9;

  private final Request request;
  private final BodyLimit limit;
  private final MemoryBudget room;
  private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final long start = System.nanoTime();

  IncomingBody(Request request, BodyLimit limit, MemoryBudget room) {
    this.request = request;
    this.limit = limit;
    this.room = room;
  }

  /**
   * The whole body; a {@link ProblemException} in its place if it can't be accepted. Never waited
   * for.
   */
  CompletableFuture<byte[]> whole() {
    return whole;
  }

  /** Reads what has come, and goes on by itself when more comes. */
  @Override
  public void run() {
    while (!whole.isDone()) {
      Content.Chunk chunk = request.read();
      if (chunk == null) {
        request.demand(this);
        return;
      }
      try {
        take(chunk);
      } catch (ProblemException refused) {
        whole.completeExceptionally(refused);
      } finally {
        chunk.release();
      }
    }
  }

  @Override
  public InvocationType getInvocationType() {
    return InvocationType.NON_BLOCKING;
  }

  private void take(Content.Chunk chunk) {
    if (Content.Chunk.isFailure(chunk)) {
      throw chunk.getFailure() instanceof TimeoutException ? tooSlow() : brokenOff();
    }
    take(chunk.getByteBuffer());
    if (chunk.isLast()) {
      whole.complete(bytes.toByteArray());
    } else if (isTooSlow()) {
      throw tooSlow();
    }
  }

  private void take(ByteBuffer part) {
    int length = part.remaining();
    if (bytes.size() + (long) length > limit.bytes()) {
      throw limit.problem().exception();
    }
    room.take(this, length);
    byte[] copy = new byte[length];
    part.get(copy);
    bytes.writeBytes(copy);
  }

  private boolean isTooSlow() {
    long elapsed = System.nanoTime() - start;
    return elapsed > GRACE.toNanos()
        && bytes.size() < elapsed / NANOSECONDS_IN_SECOND * MIN_BYTES_PER_SECOND;
  }

  private static ProblemException tooSlow() {
    return Problem.of(
            ProblemType.BODY_TOO_SLOW,
            "The body came too slowly. Send it again over a better connection, or in smaller parts.")
        .exception();
  }

  private static ProblemException brokenOff() {
    return Problem.of(
            ProblemType.BAD_REQUEST, "The body broke off before its end. Send it once more.")
        .exception();
  }

  @Override
  public void giveWay() {
    whole.completeExceptionally(
        Problem.of(
                ProblemType.UNAVAILABLE,
                "Too much is being sent to the server at once. Try again in a moment.")
            .exception());
  }

  @Override
  public boolean isComplete() {
    return whole.isDone();
  }
}
