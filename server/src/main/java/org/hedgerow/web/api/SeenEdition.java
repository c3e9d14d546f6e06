package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;

/**
 * The header {@code If-Match} (RFC 9110, section 13.1.1) of whoever changes a part of an edition:
 * the {@code ETag} of any answer out of the edition that they saw. The tags of reads begin with its
 * number.
 */
final class SeenEdition {
  private static final Pattern TAG = Pattern.compile("\"([1-9][0-9]{0,8})(-[0-9A-Za-z_-]*)?\"");

  private SeenEdition() {}

  /** The edition that was seen; empty if it doesn't matter. */
  static Optional<Lexicon> of(Context context, Editions editions) {
    return Optional.ofNullable(context.header(Header.IF_MATCH)).map(tag -> seen(tag, editions));
  }

  private static Lexicon seen(String header, Editions editions) {
    Matcher matcher = TAG.matcher(header.strip());
    if (!matcher.matches()) {
      throw wrong(
          "If-Match must be the ETag of an answer, in its quotes, as in \"7\", not %s."
              .formatted(Quoted.of(header)));
    }
    return editions
        .at(Integer.parseInt(matcher.group(1)))
        .orElseThrow(
            () ->
                wrong(
                    "If-Match names edition %s, which there is not. Read it again."
                        .formatted(matcher.group(1))));
  }

  private static ProblemException wrong(String message) {
    return Problem.at(ProblemType.INVALID_PARAMETER, Header.IF_MATCH, message).exception();
  }

  static String entityTag(int edition) {
    return "\"" + edition + "\"";
  }
}
