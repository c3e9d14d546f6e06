package org.hedgerow.web.edge;

import static org.eclipse.jetty.http.HttpHeader.ACCEPT_ENCODING;
import static org.eclipse.jetty.http.HttpHeader.CONTENT_ENCODING;
import static org.eclipse.jetty.http.HttpHeader.CONTENT_LENGTH;
import static org.eclipse.jetty.http.HttpHeader.CONTENT_TYPE;
import static org.eclipse.jetty.http.HttpHeader.ETAG;
import static org.eclipse.jetty.http.HttpHeader.IF_NONE_MATCH;
import static org.eclipse.jetty.http.HttpHeader.VARY;

import java.nio.ByteBuffer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.BufferUtil;

/**
 * Headers that depend on the whole answer: its length, its compression, and what a cache must know
 * of both (RFC 9110, sections 8.8.3.3, 12.5.5 and 15.4.5).
 */
final class AnswerHeaders {
  /** Below this, compressing saves nothing that a network would notice. */
  private static final int MIN_TO_COMPRESS = 1000;

  private static final HttpField VARIES = new HttpField(VARY, ACCEPT_ENCODING.asString());

  private static final Pattern COMPRESSIBLE =
      Pattern.compile("text/.*|application/(.*[+-])?(json|xml|yaml|javascript).*|image/svg.*");

  private AnswerHeaders() {}

  /** Sets them, and returns what is to be sent. */
  static ByteBuffer complete(Request request, Response response, ByteBuffer whole) {
    HttpFields.Mutable headers = response.getHeaders();
    boolean compressible = isCompressible(headers);
    if (compressible) {
      headers.ensureField(VARIES);
    }
    if (isBodiless(response.getStatus())) {
      return complete(request.getHeaders(), headers);
    }
    ByteBuffer sent = whole;
    if (compressible
        && whole.remaining() >= MIN_TO_COMPRESS
        && !headers.contains(CONTENT_ENCODING)
        && AcceptEncoding.gzip(request.getHeaders().get(ACCEPT_ENCODING))) {
      sent = Gzip.compress(whole);
      headers.put(CONTENT_ENCODING, "gzip");
      tag(headers).ifPresent(tag -> headers.put(ETAG, Gzip.tag(tag)));
    }
    headers.put(CONTENT_LENGTH, sent.remaining());
    return sent;
  }

  /** An answer without a body names none; a 304 names the tag of what the asker has. */
  private static ByteBuffer complete(HttpFields asked, HttpFields.Mutable headers) {
    headers.remove(CONTENT_TYPE);
    headers.remove(CONTENT_LENGTH);
    headers.remove(CONTENT_ENCODING);
    tag(headers)
        .map(Gzip::tag)
        .filter(
            tag -> asked.getValuesList(IF_NONE_MATCH).stream().anyMatch(has -> has.contains(tag)))
        .ifPresent(tag -> headers.put(ETAG, tag));
    return BufferUtil.EMPTY_BUFFER;
  }

  /** A status that nobody has set is 0 here, and becomes 200. */
  static boolean isBodiless(int status) {
    return status != 0 && HttpStatus.hasNoBody(status);
  }

  private static Optional<String> tag(HttpFields headers) {
    return Optional.ofNullable(headers.get(ETAG));
  }

  private static boolean isCompressible(HttpFields headers) {
    String type = headers.get(CONTENT_TYPE);
    return type != null && COMPRESSIBLE.matcher(type.toLowerCase(Locale.ROOT)).matches();
  }
}
