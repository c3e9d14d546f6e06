package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A question as somebody asked it: the same question can be asked in many ways.
 *
 * @param named the parameters in the path, by their names
 * @param accept the header, or an empty text
 * @param gzip whether the answer may be compressed
 */
record Wording(String path, Map<String, String> named, String query, String accept, boolean gzip) {

  private static final Pattern NO_GZIP = Pattern.compile("gzip *; *q=0(\\.0*)? *(,|$)");

  static Wording of(Context context) {
    return new Wording(
        context.path(),
        context.pathParamMap(),
        Optional.ofNullable(context.queryString()).orElse(""),
        Sending.header(context, Header.ACCEPT),
        acceptsGzip(Sending.header(context, Header.ACCEPT_ENCODING)));
  }

  private static boolean acceptsGzip(String header) {
    return header.contains("gzip") && !NO_GZIP.matcher(header).find();
  }

  /** In bytes, about. */
  int weight() {
    return AnswerCache.ENTRY_BYTES + 2 * (2 * path.length() + query.length() + accept.length());
  }
}
