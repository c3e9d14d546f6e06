package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.web.query.Parameters;

/** Answers one kind of question about the record of editions. It grows, so no answer is kept. */
public final class LogHandler implements Handler {
  private static final Formats FORMATS = new Formats(List.of(Format.JSON));

  private final Editions editions;
  private final Json json;
  private final List<String> known;
  private final LogRead read;

  /** Works an answer out, and adds what is wrong with the question to the faults. */
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
   * @param names of its parameters
   */
  public LogHandler(Editions editions, Json json, List<String> names, LogRead read) {
    this.editions = editions;
    this.json = json;
    List<String> all = new ArrayList<>(names);
    all.add(Formats.PARAMETER);
    this.known = List.copyOf(all);
    this.read = read;
  }

  @Override
  public void handle(Context context) {
    Parameters parameters =
        Parameters.parsed(Optional.ofNullable(context.queryString()).orElse(""), known);
    FORMATS.choose(
        parameters.text(Formats.PARAMETER),
        Sending.header(context, Header.ACCEPT),
        parameters.faults());
    Found found = read.find(context, parameters);
    parameters.faults().throwIfAny();
    Sending.send(
        context,
        Answer.of(
            new Extent(editions.newest().edition(), OptionalInt.empty(), found.next()),
            Format.JSON,
            json.bytes(found.view())));
  }
}
