package org.hedgerow.web.edge;

import java.util.Locale;
import java.util.Optional;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/**
 * How large the body of a request may be. Only files of those who say who they are may have more
 * than a million bytes; whether it is true, their route finds out.
 *
 * @param bytes at most
 * @param advice what is said of a larger one
 */
record BodyLimit(long bytes, String advice) {
  private static final long FILE_BYTES = 5L * 1024 * 1024;
  private static final long FORM_AROUND_FILE_BYTES = 100_000;

  private static final BodyLimit ORDINARY =
      new BodyLimit(
          1_000_000, "The body may have at most a million bytes. Send it in several parts.");
  private static final BodyLimit FILE =
      new BodyLimit(
          FILE_BYTES + FORM_AROUND_FILE_BYTES,
          "The file is too large. A picture may have at most 5 MB, a table a million bytes. Make it"
              + " smaller and send it again.");

  private static final String SESSION_COOKIE = "hedgerow-session=";

  static BodyLimit of(Request request) {
    HttpFields headers = request.getHeaders();
    return isFile(headers) && saysWho(headers) ? FILE : ORDINARY;
  }

  private static boolean isFile(HttpFields headers) {
    String type =
        Optional.ofNullable(headers.get(HttpHeader.CONTENT_TYPE))
            .orElse("")
            .toLowerCase(Locale.ROOT);
    return type.startsWith("multipart/form-data")
        || type.startsWith("image/")
        || type.startsWith("application/octet-stream");
  }

  private static boolean saysWho(HttpFields headers) {
    return headers.contains(HttpHeader.AUTHORIZATION)
        || headers.getValuesList(HttpHeader.COOKIE).stream()
            .anyMatch(cookies -> cookies.contains(SESSION_COOKIE));
  }

  static boolean hasBody(Request request) {
    return request.getLength() > 0 || request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING);
  }

  Problem problem() {
    return Problem.of(ProblemType.BODY_TOO_LARGE, advice);
  }
}
