package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;

/** Sends answers, but not to those who have them already. */
public final class Sending {
  /** To be asked for again each time, by its tag. */
  public static final String REVALIDATED = "no-cache";

  /** Never changes at this address. */
  public static final String FOR_GOOD = "public, max-age=31536000, immutable";

  public static final String FOR_A_DAY = "public, max-age=86400";

  static final String EDITION = "Hedgerow-Edition";
  static final String TOTAL = "Hedgerow-Total";

  private Sending() {}

  /** An answer that a newer edition may change. */
  public static void send(Context context, Answer answer) {
    send(context, answer, REVALIDATED);
  }

  /** An answer of an edition that the asker has named: it stays as it is. */
  static void sendForGood(Context context, Answer answer) {
    send(context, answer, FOR_GOOD);
  }

  private static void send(Context context, Answer answer, String caching) {
    context.header(Header.VARY, "Accept, Accept-Encoding");
    describe(context, answer.extent());
    if (isWanted(context, answer.entityTag(), caching)) {
      if (answer.gzipped()) {
        context.header(Header.CONTENT_ENCODING, "gzip");
      }
      context.contentType(answer.contentType()).result(answer.bytes());
    }
  }

  /**
   * Sends a file that is the same for everybody.
   *
   * @param caching the header {@code Cache-Control}
   */
  public static void file(
      Context context, byte[] bytes, String contentType, String entityTag, String caching) {
    context.contentType(contentType);
    if (isWanted(context, entityTag, caching)) {
      context.result(bytes);
    }
  }

  /** Says what it is; then whether it must be sent, or the asker has it. */
  private static boolean isWanted(Context context, String entityTag, String caching) {
    context.header(Header.ETAG, entityTag).header(Header.CACHE_CONTROL, caching);
    if (Conditions.alreadyHas(header(context, Header.IF_NONE_MATCH), entityTag)) {
      context.status(304);
      return false;
    }
    return true;
  }

  private static void describe(Context context, Extent extent) {
    context.header(EDITION, String.valueOf(extent.edition()));
    extent.total().ifPresent(total -> context.header(TOTAL, String.valueOf(total)));
    extent.next().ifPresent(next -> context.header("Link", "<" + next + ">; rel=\"next\""));
  }

  /** A header of the request, or an empty text. */
  static String header(Context context, String name) {
    return Optional.ofNullable(context.header(name)).orElse("");
  }
}
