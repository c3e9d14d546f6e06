package org.hedgerow.web.edge;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.hedgerow.web.problems.JsonProblems;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.RetryAfter;
import org.jspecify.annotations.Nullable;

/**
 * Answers requests that the HTTP server refuses before any route sees them: bad addresses, headers
 * too large and the like.
 */
public final class UnroutedErrors extends ErrorHandler {
  private final JsonProblems json;

  public UnroutedErrors(JsonProblems json) {
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
    SecurityHeaders.addTo(response.getHeaders());
    response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
    response.getHeaders().put("Access-Control-Allow-Origin", "*");
    if (code == 503) {
      response.getHeaders().put(HttpHeader.RETRY_AFTER, RetryAfter.SOON);
    }
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, JsonProblems.MEDIA_TYPE);
    response.write(
        true, ByteBuffer.wrap(json.bytes(Problem.ofStatus(code, advice(code)))), callback);
  }

  private static String advice(int code) {
    return switch (code) {
      case 400 ->
          "This is no request in HTTP, or its address is not. Percent-encode every character of the"
              + " address that isn't a letter, a digit or one of - . _ ~ / ? & =.";
      case 404 -> "There is nothing at this address.";
      case 408 -> "The request came too slowly. Send it again.";
      case 413 -> "The body is too large. Send it in several parts.";
      case 414 ->
          "The address is longer than 8,000 characters. Ask in several parts, or send the words as a"
              + " body to /api/v1/word-checks.";
      case 417 -> "The header Expect can only be 100-continue. Leave it out.";
      case 426, 505 -> "Only HTTP/1.0 and HTTP/1.1 are spoken here.";
      case 431 ->
          "The headers have more than 8,000 characters. Delete the cookies of this site, or send"
              + " fewer headers.";
      case 501 ->
          "There is no such method here. Use GET, HEAD, POST, PUT, PATCH, DELETE or OPTIONS.";
      case 503 -> "The server is stopping or has too much to do. Try again in a moment.";
      default ->
          code < 500
              ? "The HTTP server refused the request. Check its address, headers and body."
              : "Nothing is wrong with the request. Try again in a moment.";
    };
  }
}
