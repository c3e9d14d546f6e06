package org.hedgerow.web.api.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;

/** The header {@code If-Match} (RFC 9110, section 13.1.1), which names one revision here. */
final class IfMatch {
  private static final Pattern REVISION = Pattern.compile("\"([1-9][0-9]{0,8})\"");

  private IfMatch() {}

  /** The revision that was read; asking for any would let people overwrite what they never saw. */
  static int revision(Context context) {
    String header = Optional.ofNullable(context.header(Header.IF_MATCH)).orElse("").strip();
    if (header.isEmpty()) {
      throw Problem.of(
              ProblemType.REVISION_REQUIRED,
              "Send the header If-Match with the ETag of the contribution as you read it, as in"
                  + " If-Match: \"2\".")
          .exception();
    }
    Matcher matcher = REVISION.matcher(header);
    if (!matcher.matches()) {
      throw Problem.at(
              ProblemType.INVALID_PARAMETER,
              Header.IF_MATCH,
              "If-Match must be one ETag of the contribution in its quotes, as in \"2\", not %s."
                  .formatted(Quoted.of(header)))
          .exception();
    }
    return Integer.parseInt(matcher.group(1));
  }

  static String entityTag(int revision) {
    return "\"" + revision + "\"";
  }
}
