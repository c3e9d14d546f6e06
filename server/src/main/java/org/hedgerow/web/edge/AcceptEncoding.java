package org.hedgerow.web.edge;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The header {@code Accept-Encoding} (RFC 9110, section 12.5.3). */
public final class AcceptEncoding {
  private static final Pattern GZIP = Pattern.compile("(^|[, ])(x-)?gzip\\s*($|[,;])");
  private static final Pattern NO_GZIP = Pattern.compile("gzip\\s*;\\s*q=0(\\.0*)?\\s*(,|$)");

  private AcceptEncoding() {}

  /** Whether an answer may be compressed with gzip. */
  public static boolean gzip(@Nullable String header) {
    if (header == null) {
      return false;
    }
    String codings = header.toLowerCase(Locale.ROOT);
    return GZIP.matcher(codings).find() && !NO_GZIP.matcher(codings).find();
  }
}
