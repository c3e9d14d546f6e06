package org.hedgerow.web.edge;

import java.nio.ByteBuffer;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;

/** A request whose body is in memory already. */
final class RequestWithBody extends Request.Wrapper {
  private Content.Chunk next;

  private RequestWithBody(Request request, Content.Chunk body) {
    super(request);
    this.next = body;
  }

  static RequestWithBody of(Request request, byte[] body) {
    return new RequestWithBody(request, Content.Chunk.from(ByteBuffer.wrap(body), true));
  }

  static RequestWithBody none(Request request) {
    return new RequestWithBody(request, Content.Chunk.EOF);
  }

  @Override
  public Content.Chunk read() {
    Content.Chunk chunk = next;
    next = Content.Chunk.next(chunk);
    return chunk;
  }

  /** Discards only what is in memory; {@link BodyDrain} reads the rest of a refused body. */
  @Override
  public boolean consumeAvailable() {
    next = Content.Chunk.EOF;
    return true;
  }

  @Override
  public void demand(Runnable demandCallback) {
    demandCallback.run();
  }
}
