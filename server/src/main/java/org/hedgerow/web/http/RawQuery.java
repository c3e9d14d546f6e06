package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.web.edge.AcceptEncoding;

/**
 * A question as somebody asked it: the same question can be asked in many ways.
 *
 * @param named the parameters in the path, by their names
 * @param accept the header, or an empty text
 * @param gzip whether the answer may be compressed
 */
record RawQuery(String path, Map<String, String> named, String query, String accept, boolean gzip) {

  static RawQuery of(Context context) {
    return new RawQuery(
        context.path(),
        context.pathParamMap(),
        Optional.ofNullable(context.queryString()).orElse(""),
        Sending.header(context, Header.ACCEPT),
        AcceptEncoding.gzip(context.header(Header.ACCEPT_ENCODING)));
  }

  /** Without path, parameters or headers. */
  static RawQuery ofNothing() {
    return new RawQuery("", Map.of(), "", "", false);
  }

  /**
   * Whether the query holds a parameter. One whose name is percent-encoded for no reason isn't
   * seen.
   */
  boolean asks(String parameter) {
    return query.startsWith(parameter + "=") || query.contains("&" + parameter + "=");
  }

  /** In bytes, about. */
  int weight() {
    return AnswerCache.ENTRY_BYTES + 2 * (2 * path.length() + query.length() + accept.length());
  }
}
