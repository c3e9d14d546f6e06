package org.hedgerow.web.problems;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Header;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.router.Endpoint;
import io.javalin.validation.ValidationException;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.lang.Thread.UncaughtExceptionHandler;
import java.util.UUID;
import org.eclipse.jetty.http.HttpException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Turns everything that can be thrown while a request is handled into a problem. It replaces all of
 * Javalin's own answers, which reflect what was sent and tell class names.
 */
public final class ErrorMapping {
  private static final Logger LOG = LoggerFactory.getLogger(ErrorMapping.class);

  private final JsonProblems json;
  private final ProblemWriter writer;

  /**
   * @param json for errors that no page can be made for
   * @param writer for all others
   */
  public ErrorMapping(JsonProblems json, ProblemWriter writer) {
    this.json = json;
    this.writer =
        (context, problem) -> {
          RetryAfter.addTo(context, problem);
          writer.write(context, problem);
        };
  }

  /** For errors that no route can be made to answer. */
  public JsonProblems json() {
    return json;
  }

  public void addTo(JavalinConfig config) {
    config.http.prefer405over404 = true;
    config.routes.exception(
        ProblemException.class, (thrown, context) -> writer.write(context, thrown.problem()));
    config.routes.exception(HttpResponseException.class, this::answer);
    config.routes.exception(
        ValidationException.class,
        (thrown, context) ->
            writer.write(context, Problem.ofStatus(400, "A parameter has a wrong value.")));
    config.routes.exception(ServletException.class, this::answerUnreadable);
    config.routes.exception(Exception.class, this::answerUnexpected);
    config.router.javaLangErrorHandler(this::answerFatal);
  }

  private void answer(HttpResponseException thrown, Context context) {
    if (thrown.getStatus() < 400) {
      context.status(thrown.getStatus());
      return;
    }
    if (thrown instanceof MethodNotAllowedResponse) {
      thrown.getDetails().values().forEach(methods -> context.header(Header.ALLOW, methods));
    }
    writer.write(context, Problem.ofStatus(thrown.getStatus(), detail(thrown, context)));
  }

  private static String detail(HttpResponseException thrown, Context context) {
    return switch (thrown.getStatus()) {
      case 404 -> "There is nothing at %s.".formatted(context.path());
      case 405 -> "%s is not possible at %s.".formatted(context.method().name(), context.path());
      case 413 -> "The body may have at most a million bytes. Send it in several parts.";
      default -> "The request can't be answered as it is.";
    };
  }

  /** Jetty tells only in words why it can't read a form with files in it. */
  private void answerUnreadable(ServletException thrown, Context context) {
    if (!(thrown.getCause() instanceof HttpException)) {
      answerUnexpected(thrown, context);
    } else if (String.valueOf(deepest(thrown).getMessage()).contains("exceeded")) {
      writer.write(
          context,
          Problem.of(
              ProblemType.BODY_TOO_LARGE,
              "The file is too large. A picture may have at most 5 MB, a table a million bytes. Make it smaller and send it again."));
    } else {
      writer.write(
          context,
          Problem.of(ProblemType.BAD_REQUEST, "The form can't be read. Load the page again."));
    }
  }

  private static Throwable deepest(Throwable thrown) {
    Throwable deepest = thrown;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return deepest;
  }

  private void answerUnexpected(Exception thrown, Context context) {
    writer.write(context, incident(thrown, context.method().name() + " " + route(context)));
  }

  /** Not the address itself: it may have a secret in it. */
  private static String route(Context context) {
    Endpoint endpoint = context.endpoints().lastHttpEndpoint();
    return endpoint == null ? "no route" : endpoint.path;
  }

  /**
   * Never throws: Javalin handles what an error handler throws by the same handler again, without
   * end, and the thread would spin for ever.
   */
  private void answerFatal(HttpServletResponse response, Error thrown) {
    try {
      response.setStatus(500);
      response.setContentType(JsonProblems.MEDIA_TYPE);
      if (thrown instanceof OutOfMemoryError) {
        handOver(thrown);
      } else {
        response.getOutputStream().write(json.bytes(incident(thrown, "a request")));
      }
    } catch (IOException | RuntimeException | Error untold) {
      // The client is gone or the program is broken; whatever is tried here could throw again.
      return;
    }
  }

  /** Gives an error that no request can answer for to whoever looks after the whole program. */
  private static void handOver(Error thrown) {
    UncaughtExceptionHandler program = Thread.getDefaultUncaughtExceptionHandler();
    if (program != null) {
      program.uncaughtException(Thread.currentThread(), thrown);
    }
  }

  private static Problem incident(Throwable thrown, String request) {
    String number = UUID.randomUUID().toString().substring(0, 8);
    LOG.error("Incident {} at {}", number, request, thrown);
    return Problem.of(
        ProblemType.INTERNAL_ERROR,
        "Nothing is wrong with the request. Try again, and if it comes back tell whoever runs this server: incident %s."
            .formatted(number));
  }
}
