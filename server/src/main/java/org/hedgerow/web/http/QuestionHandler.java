package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Faults;
import org.hedgerow.web.query.Parameters;

/**
 * Answers one kind of question that is sent as JSON, because it is too long for an address. It
 * changes nothing.
 */
public final class QuestionHandler<T> implements Handler {

  /** Works an answer out, and adds what is wrong with the question to the faults. */
  @FunctionalInterface
  public interface Answerer<T> {
    Object answer(Context context, Lexicon lexicon, T body, Faults faults);
  }

  private static final Formats FORMATS = new Formats(List.of(Format.JSON));

  private final Editions editions;
  private final JsonBody bodies;
  private final Class<T> type;
  private final Json json;
  private final Answerer<T> answerer;

  public QuestionHandler(
      Editions editions, JsonBody bodies, Class<T> type, Json json, Answerer<T> answerer) {
    this.editions = editions;
    this.bodies = bodies;
    this.type = type;
    this.json = json;
    this.answerer = answerer;
  }

  @Override
  public void handle(Context context) {
    Parameters parameters =
        Parameters.parsed(
            Optional.ofNullable(context.queryString()).orElse(""),
            List.of(EditionChoice.PARAMETER));
    Lexicon lexicon = EditionChoice.of(editions, parameters);
    FORMATS.choose(
        Optional.empty(),
        Optional.ofNullable(context.header(Header.ACCEPT)).orElse(""),
        parameters.faults());
    parameters.faults().throwIfAny();
    Object answer = answerer.answer(context, lexicon, bodies.read(context, type), Faults.ofBody());
    context
        .header(Header.CACHE_CONTROL, "no-store")
        .contentType(Format.JSON.contentType())
        .result(json.bytes(answer));
  }
}
