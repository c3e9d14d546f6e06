package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.web.query.Parameters;

/**
 * What a request asks for that isn't answered from an edition.
 *
 * @param parameters whose faults are still to be thrown
 */
public record Asked(Parameters parameters, Format format) {
  private static final List<Format> JSON_ONLY = List.of(Format.JSON);

  /** A request whose answer comes in JSON only. */
  public static Asked json(Context context, List<String> known) {
    return of(context, known, JSON_ONLY, false);
  }

  /** A request that takes no parameters. */
  public static void nothing(Context context) {
    json(context, List.of()).parameters().faults().throwIfAny();
  }

  /** With a parameter for the format, too. */
  public static Asked list(Context context, List<String> known, List<Format> formats) {
    return of(context, known, formats, true);
  }

  private static Asked of(
      Context context, List<String> known, List<Format> formats, boolean withFormat) {
    List<String> names = new ArrayList<>(known);
    if (withFormat) {
      names.add(Formats.PARAMETER);
    }
    Parameters parameters =
        Parameters.parsed(Optional.ofNullable(context.queryString()).orElse(""), names);
    Format format =
        new Formats(formats)
            .choose(
                parameters.text(Formats.PARAMETER),
                Optional.ofNullable(context.header(Header.ACCEPT)).orElse(""),
                parameters.faults());
    return new Asked(parameters, format);
  }
}
