package org.hedgerow.web.problems;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Answers requests that Jetty refuses before any route sees them: bad addresses, headers too large
 * and the like.
 */
final class UnroutedErrors extends ErrorHandler {
  private final JsonProblems json;

  UnroutedErrors(JsonProblems json) {
    this.json = json;
  }

  @Override
  public boolean errorPageForMethod(@Nullable String method) {
    return true;
  }

  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int code,
      @Nullable String message,
      @Nullable Throwable cause,
      Callback callback) {
    Problem problem = Problem.ofStatus(code, "The request can't be answered as it is.");
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, JsonProblems.MEDIA_TYPE);
    if (code == 503) {
      response.getHeaders().put(HttpHeader.RETRY_AFTER, RetryAfter.SOON);
    }
    response.write(true, ByteBuffer.wrap(json.bytes(problem)), callback);
  }
}
