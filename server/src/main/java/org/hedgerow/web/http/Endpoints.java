package org.hedgerow.web.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.JsonBody;
import org.hedgerow.web.Routes;
import org.hedgerow.web.query.EditionChoice;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.query.ValidationErrors;

/** Enters what anybody's program may ask into the table of routes. */
public final class Endpoints {

  private final Routes routes;
  private final Editions editions;
  private final AnswerCache cache;
  private final JsonBody bodies;
  private final Json json;
  private final List<Runnable> rehearsals = new ArrayList<>();

  public Endpoints(Routes routes, Editions editions, AnswerCache cache, ObjectMapper mapper) {
    this.routes = routes;
    this.editions = editions;
    this.cache = cache;
    this.bodies = new JsonBody(mapper);
    this.json = new Json(mapper);
  }

  public Editions editions() {
    return editions;
  }

  public Json json() {
    return json;
  }

  /** What takes long when it is first asked for. */
  public List<Runnable> rehearsals() {
    return List.copyOf(rehearsals);
  }

  /** A read of an edition, whose answers are kept. */
  public void read(String path, Read read) {
    enter(path, read);
  }

  /** A read that takes long when it is first asked for. */
  public void rehearsedRead(String path, Read read) {
    rehearsals.add(enter(path, read)::rehearse);
  }

  private ReadHandler enter(String path, Read read) {
    ReadHandler handler = new ReadHandler(editions, cache, read);
    editions.beforeEach(handler::prepare);
    get(Routes.API + path, handler);
    return handler;
  }

  /** Answers a question about the record of editions; adds what is wrong with it to the errors. */
  @FunctionalInterface
  public interface LogRead {
    Found find(Context context, Parameters parameters);
  }

  /**
   * @param next where the list goes on, a relative reference
   */
  public record Found(Object view, Optional<String> next) {
    public static Found all(Object view) {
      return new Found(view, Optional.empty());
    }
  }

  /**
   * A question about the record of editions. It grows, so no answer is kept.
   *
   * @param parameters the names of its own query parameters
   */
  public void log(String path, List<String> parameters, LogRead read) {
    get(Routes.API + path, context -> answer(context, parameters, read));
  }

  private void answer(Context context, List<String> names, LogRead read) {
    ApiRequest request = ApiRequest.list(context, names, List.of(Format.JSON));
    Found found = read.find(context, request.parameters());
    request.parameters().errors().throwIfAny();
    Extent extent = new Extent(editions.newest().edition(), OptionalInt.empty(), found.next());
    Sending.send(context, Answer.of(extent, Format.JSON, json.bytes(found.view())));
  }

  /** Works an answer out, and adds what is wrong with the question to the errors. */
  @FunctionalInterface
  public interface Answerer<T> {
    Object answer(Lexicon lexicon, T body, ValidationErrors errors);
  }

  /** The same where it depends on who asks, and how often. */
  @FunctionalInterface
  public interface LimitedAnswerer<T> {
    Object answer(Context context, Lexicon lexicon, T body, ValidationErrors errors);
  }

  /**
   * A question that is sent as JSON, because it is too long for an address. It changes nothing.
   *
   * @param type of its body
   */
  public <T> void question(String path, Class<T> type, Answerer<T> answerer) {
    limitedQuestion(
        path, type, (context, lexicon, body, errors) -> answerer.answer(lexicon, body, errors));
  }

  /** A question that each client may ask only so often. */
  public <T> void limitedQuestion(String path, Class<T> type, LimitedAnswerer<T> answerer) {
    routes.post(Routes.API + path, context -> answer(context, type, answerer));
    Cors.allow(routes, Routes.API + path, "POST");
  }

  private <T> void answer(Context context, Class<T> type, LimitedAnswerer<T> answerer) {
    ApiRequest request = ApiRequest.json(context, List.of(EditionChoice.PARAMETER));
    Lexicon lexicon = EditionChoice.of(editions, request.parameters());
    request.parameters().errors().throwIfAny();
    Object answer =
        answerer.answer(context, lexicon, bodies.read(context, type), ValidationErrors.ofBody());
    context
        .header(Header.CACHE_CONTROL, "no-store")
        .contentType(Format.JSON.contentType())
        .result(json.bytes(answer));
  }

  /** Anything else that anybody may read, by pages of other sites, too. */
  public void get(String path, Handler handler) {
    routes.get(path, handler);
    Cors.allow(routes, path, "GET");
  }
}
