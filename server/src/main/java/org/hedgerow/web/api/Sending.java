package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;

/** Sends answers, but not to those who have them already. */
final class Sending {
  static final String EDITION = "Hedgerow-Edition";
  static final String TOTAL = "Hedgerow-Total";

  private Sending() {}

  static void send(Context context, Answer answer) {
    context
        .header(Header.ETAG, answer.entityTag())
        .header(Header.CACHE_CONTROL, "no-cache")
        .header(Header.VARY, "Accept, Accept-Encoding");
    describe(context, answer.extent());
    if (Conditions.alreadyHas(header(context, Header.IF_NONE_MATCH), answer.entityTag())) {
      context.status(304);
      return;
    }
    context.disableCompression();
    context.res().setContentLength(answer.bytes().length);
    if (answer.gzipped()) {
      context.header(Header.CONTENT_ENCODING, "gzip");
    }
    context.contentType(answer.contentType()).result(answer.bytes());
  }

  private static void describe(Context context, Extent extent) {
    context.header(EDITION, String.valueOf(extent.edition()));
    extent.total().ifPresent(total -> context.header(TOTAL, String.valueOf(total)));
    extent.next().ifPresent(next -> context.header("Link", "<%s>; rel=\"next\"".formatted(next)));
  }

  /** A header of the request, or an empty text. */
  static String header(Context context, String name) {
    return Optional.ofNullable(context.header(name)).orElse("");
  }
}
