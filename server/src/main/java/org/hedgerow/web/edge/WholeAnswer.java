package org.hedgerow.web.edge;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Collects an answer and sends it as one, without a thread that waits until the client has read it.
 * Serves as the callback of the request too, which is over once everything is sent.
 */
final class WholeAnswer extends Response.Wrapper implements Callback, MemoryBudget.Held {
  /** What any client is granted to read an answer. */
  private static final Duration GRACE = Duration.ofSeconds(20);

  private static final long MIN_BYTES_PER_SECOND = 2_000;

  private final Callback end;
  private final MemoryBudget room;
  private final Parts parts = new Parts();
  private final CompletableFuture<@Nullable Void> written = new CompletableFuture<>();
  private boolean sent;
  private @Nullable BodyDrain drain;
  private Runnable release = () -> {};

  WholeAnswer(Request request, Response response, Callback end, MemoryBudget room) {
    super(request, response);
    this.end = end;
    this.room = room;
  }

  /** To be run when the request is over, in whatever way. */
  void atEnd(Runnable release) {
    this.release = release;
  }

  void thenDrain(BodyDrain drain) {
    this.drain = drain;
  }

  /** Parts of an answer, put together. */
  private static final class Parts extends ByteArrayOutputStream {
    void add(ByteBuffer part) {
      byte[] copy = new byte[part.remaining()];
      part.get(copy);
      writeBytes(copy);
    }

    ByteBuffer together() {
      return ByteBuffer.wrap(buf, 0, count);
    }
  }

  /**
   * Most answers come as one last part, which belongs to the answer until the callback is called:
   * it is sent as it is. Of others each part is the writer's again at once.
   */
  @Override
  public void write(boolean last, @Nullable ByteBuffer part, Callback callback) {
    if (last && part != null && parts.size() == 0) {
      send(part, callback);
      return;
    }
    if (part != null) {
      parts.add(part);
    }
    if (last) {
      send(parts.together(), Callback.NOOP);
    }
    callback.succeeded();
  }

  private void send(ByteBuffer collected, Callback taken) {
    if (sent) {
      taken.succeeded();
      return;
    }
    sent = true;
    ByteBuffer whole = AnswerHeaders.complete(getRequest(), getWrapped(), collected);
    int length = whole.remaining();
    Callback over = Callback.combine(Callback.from(written), taken);
    BodyDrain rest = drain;
    if (rest != null) {
      super.write(false, whole, Callback.from(() -> rest.run(theEnd(over)), over::failed));
    } else if (AnswerHeaders.isBodiless(getStatus())) {
      super.write(false, null, theEnd(over));
    } else {
      super.write(true, whole, over);
    }
    if (!written.isDone()) {
      room.take(this, length);
      hurry(length);
    }
  }

  /**
   * Ends an answer that was sent already. Jetty would give one that is sent at once a length, also
   * where there mustn't be one; and with the end of one whose request isn't read it would close the
   * connection, so that a client which still sends never sees it.
   */
  private Callback theEnd(Callback over) {
    return Callback.from(() -> super.write(true, null, over), over::failed);
  }

  /** A client that reads too slowly is left. */
  private void hurry(int length) {
    long seconds = GRACE.toSeconds() + length / MIN_BYTES_PER_SECOND;
    Scheduler.Task leaving =
        getRequest()
            .getComponents()
            .getScheduler()
            .schedule(this::giveWay, seconds, TimeUnit.SECONDS);
    var unused =
        written.whenComplete(
            (nothing, failure) -> {
              leaving.cancel();
              room.release(this);
            });
  }

  @Override
  public boolean isComplete() {
    return written.isDone();
  }

  @Override
  public void giveWay() {
    getRequest()
        .getConnectionMetaData()
        .getConnection()
        .getEndPoint()
        .close(new TimeoutException("The answer is read too slowly"));
  }

  @Override
  public boolean hasLastWrite() {
    return sent;
  }

  @Override
  public void reset() {
    parts.reset();
    super.reset();
    SecurityHeaders.addTo(getHeaders());
  }

  @Override
  public void succeeded() {
    send(parts.together(), Callback.NOOP);
    var unused =
        written.whenComplete(
            (nothing, failure) -> {
              if (failure == null) {
                finish();
              } else {
                failed(failure);
              }
            });
  }

  private void finish() {
    release.run();
    end.succeeded();
  }

  @Override
  public void failed(Throwable failure) {
    release.run();
    end.failed(failure);
  }
}
