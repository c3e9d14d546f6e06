package org.hedgerow.web.edge;

import static org.eclipse.jetty.http.HttpHeader.IF_MATCH;
import static org.eclipse.jetty.http.HttpHeader.IF_NONE_MATCH;

import java.util.List;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;

/**
 * A request whose conditions name plain representations: routes know nothing of compressed ones.
 */
final class PlainTags extends Request.Wrapper {
  private final HttpFields headers;

  private PlainTags(Request request) {
    super(request);
    HttpFields.Mutable plain = HttpFields.build(request.getHeaders());
    for (HttpHeader condition : List.of(IF_MATCH, IF_NONE_MATCH)) {
      if (plain.contains(condition)) {
        plain.put(condition, Gzip.plainAll(String.join(", ", plain.getValuesList(condition))));
      }
    }
    this.headers = plain.asImmutable();
  }

  static Request of(Request request) {
    HttpFields headers = request.getHeaders();
    return headers.contains(IF_MATCH) || headers.contains(IF_NONE_MATCH)
        ? new PlainTags(request)
        : request;
  }

  @Override
  public HttpFields getHeaders() {
    return headers;
  }
}
