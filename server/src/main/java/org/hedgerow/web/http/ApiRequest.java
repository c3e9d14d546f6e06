package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.security.Identity;

/**
 * A request of a program, its query and the format of its answer understood.
 *
 * @param parameters whose errors are still to be thrown
 */
public record ApiRequest(Context context, Parameters parameters, Format format) {
  private static final List<Format> JSON_ONLY = List.of(Format.JSON);

  /** A request whose answer comes in JSON only. */
  public static ApiRequest json(Context context, List<String> names) {
    return of(context, names, JSON_ONLY);
  }

  /**
   * Refuses all parameters, and formats other than JSON.
   *
   * @throws org.hedgerow.web.query.InvalidQueryException if there are any
   */
  public static void requireNoParameters(Context context) {
    json(context, List.of()).parameters().errors().throwIfAny();
  }

  /**
   * A request that may name the format of its answer.
   *
   * @param formats the usual one first
   */
  public static ApiRequest list(Context context, List<String> names, List<Format> formats) {
    List<String> all = new ArrayList<>(names);
    all.add(Formats.PARAMETER);
    return of(context, all, formats);
  }

  private static ApiRequest of(Context context, List<String> names, List<Format> formats) {
    Parameters parameters = parameters(context, names);
    Format format =
        new Formats(formats)
            .choose(
                parameters.text(Formats.PARAMETER),
                Sending.header(context, Header.ACCEPT),
                parameters.errors());
    return new ApiRequest(context, parameters, format);
  }

  /** A request whose answer has a type of its own, such as a picture's. */
  static ApiRequest ofAnyType(Context context, List<String> names) {
    return new ApiRequest(context, parameters(context, names), Format.JSON);
  }

  private static Parameters parameters(Context context, List<String> names) {
    return Parameters.parsed(Optional.ofNullable(context.queryString()).orElse(""), names);
  }

  public Actor actor() {
    return Identity.of(context).actor();
  }
}
