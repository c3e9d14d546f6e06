package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.security.Identity;
import org.hedgerow.web.security.Refusals;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Refuses parameters that nobody knows and formats that don't come, before anything is done. */
public final class StrictHandler implements Handler {

  /** What a request does. */
  @FunctionalInterface
  public interface Step {
    void take(Request request);
  }

  /**
   * A request that may be looked at.
   *
   * @param parameters whose faults the step throws, if it has any parameters
   * @param format in which the answer should come
   */
  public record Request(Context context, Actor actor, Parameters parameters, Format format) {}

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
    this.parameters = withFormat(parameters, formats);
    this.formats = List.copyOf(formats);
  }

  /** Only where there is a choice, a parameter can make it. */
  private static List<String> withFormat(List<String> parameters, List<Format> formats) {
    List<String> all = new ArrayList<>(parameters);
    if (formats.size() > 1) {
      all.add(Formats.PARAMETER);
    }
    return List.copyOf(all);
  }

  @Override
  public void handle(Context context) {
    String query = Optional.ofNullable(context.queryString()).orElse("");
    Parameters read = Parameters.parsed(query, parameters);
    Format format = format(context, read);
    if (parameters.isEmpty()) {
      read.faults().throwIfAny();
    }
    Actor actor = Identity.of(context).actor();
    try {
      step.take(new Request(context, actor, read, format));
    } catch (RuntimeException thrown) {
      log(thrown, context, actor);
      throw thrown;
    }
  }

  /** Without what was sent, which is nobody's business. */
  private static void log(RuntimeException thrown, Context context, Actor actor) {
    if (Refusals.problem(thrown).orElse(thrown) instanceof ProblemException refused) {
      LOG.info(
          "Refused: {} at {} {} from {}",
          refused.problem().type().slug(),
          context.method().name(),
          context.path(),
          actor.name());
    }
  }

  private Format format(Context context, Parameters read) {
    String accept = Optional.ofNullable(context.header(Header.ACCEPT)).orElse("");
    return formats.isEmpty()
        ? Format.JSON
        : new Formats(formats).choose(read.text(Formats.PARAMETER), accept, read.faults());
  }
}
