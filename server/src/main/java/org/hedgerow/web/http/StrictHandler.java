package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.security.Refusals;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Refuses parameters that nobody knows and formats that don't come, before anything is done. */
public final class StrictHandler implements Handler {

  /** What a request does; throws the errors of the parameters, if it has any parameters. */
  @FunctionalInterface
  public interface Step {
    void take(ApiRequest request);
  }

  private static final Logger LOG = LoggerFactory.getLogger(StrictHandler.class);

  private final Step step;
  private final List<String> parameters;
  private final List<Format> formats;

  /**
   * @param parameters of its query
   * @param formats of its answer, the usual one first; none where no format can be asked for
   */
  public StrictHandler(Step step, List<String> parameters, List<Format> formats) {
    this.step = step;
    this.parameters = List.copyOf(parameters);
    this.formats = List.copyOf(formats);
  }

  @Override
  public void handle(Context context) {
    ApiRequest request = request(context);
    if (parameters.isEmpty() && formats.size() < 2) {
      request.parameters().errors().throwIfAny();
    }
    try {
      step.take(request);
    } catch (RuntimeException thrown) {
      log(thrown, request);
      throw thrown;
    }
  }

  /** Only where there is a choice of formats, a parameter can make it. */
  private ApiRequest request(Context context) {
    return switch (formats.size()) {
      case 0 -> ApiRequest.ofAnyType(context, parameters);
      case 1 -> ApiRequest.json(context, parameters);
      default -> ApiRequest.list(context, parameters, formats);
    };
  }

  /** Without what was sent, which is nobody's business. */
  private static void log(RuntimeException thrown, ApiRequest request) {
    if (Refusals.problem(thrown).orElse(thrown) instanceof ProblemException refused) {
      LOG.info(
          "Refused: {} at {} {} from {}",
          refused.problem().type().slug(),
          request.context().method().name(),
          request.context().path(),
          request.actor().name());
    }
  }
}
