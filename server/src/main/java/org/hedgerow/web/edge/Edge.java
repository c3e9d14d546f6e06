package org.hedgerow.web.edge;

import io.javalin.http.Context;
import java.util.concurrent.CompletionException;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * Reads the whole body of a request before a thread is given to its route, and takes the whole
 * answer off the thread before it is sent. However slowly a client sends or reads, it costs memory
 * and a connection, never a thread.
 *
 * <p>A body that can't be accepted still reaches the routes, empty and with its {@link
 * #requireAccepted refusal}, so that it is answered as every other problem is.
 */
public final class Edge extends Handler.Wrapper {
  private static final String REFUSAL = Edge.class.getName() + ".refusal";

  private final MemoryBudget bodies = MemoryBudget.shared();
  private final MemoryBudget answers = MemoryBudget.shared();

  /**
   * Runs before every route.
   *
   * @throws org.hedgerow.web.problems.ProblemException if the body of the request was refused
   */
  public static void requireAccepted(Context context) {
    if (context.req().getAttribute(REFUSAL) instanceof Problem refused) {
      context.header("Connection", "close");
      throw refused.exception();
    }
  }

  @Override
  public boolean handle(Request asked, Response response, Callback callback) throws Exception {
    SecurityHeaders.addTo(response.getHeaders());
    WholeAnswer answer = new WholeAnswer(asked, response, callback, answers);
    Request request = PlainTags.of(asked);
    if (!BodyLimit.hasBody(request)) {
      return super.handle(request, answer, answer);
    }
    BodyLimit limit = BodyLimit.of(request);
    if (request.getLength() > limit.bytes()) {
      refuse(request, answer, limit.problem());
      return true;
    }
    IncomingBody body = new IncomingBody(request, limit, bodies);
    answer.atEnd(() -> bodies.release(body));
    body.run();
    if (body.isComplete()) {
      proceed(request, answer, body);
    } else {
      var unused =
          body.whole()
              .whenComplete(
                  (bytes, failure) ->
                      getServer().getThreadPool().execute(() -> proceed(request, answer, body)));
    }
    return true;
  }

  private void proceed(Request request, WholeAnswer answer, IncomingBody body) {
    try {
      pass(RequestWithBody.of(request, body.whole().join()), answer);
    } catch (CompletionException refused) {
      refuse(request, answer, problem(refused));
    }
  }

  private static Problem problem(CompletionException refused) {
    return refused.getCause() instanceof ProblemException known
        ? known.problem()
        : Problem.ofStatus(400, "The body can't be read. Send it once more.");
  }

  /**
   * Clients see the answer once they have sent all: what still comes of a large body is drained.
   */
  private void refuse(Request request, WholeAnswer answer, Problem problem) {
    request.setAttribute(REFUSAL, problem);
    if (problem.type() == ProblemType.BODY_TOO_LARGE) {
      answer.thenDrain(new BodyDrain(request));
    }
    pass(RequestWithBody.none(request), answer);
  }

  private void pass(Request request, WholeAnswer answer) {
    try {
      if (!super.handle(request, answer, answer)) {
        Response.writeError(request, answer, answer, 404);
      }
    } catch (Exception failure) {
      Response.writeError(request, answer, answer, failure);
    }
  }
}
