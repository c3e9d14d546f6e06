package org.hedgerow.web.http;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Quoted;

/**
 * The header {@code If-Match} (RFC 9110, section 13.1.1). It is compared strongly: a tag marked as
 * weak matches nothing.
 *
 * @param any whether it is {@code *}
 * @param tags the strong ones, each in its quotes
 */
public record IfMatch(boolean any, List<String> tags) {
  private static final Pattern TAG = Pattern.compile("\\s*(W/)?(\"[!#-~\\x80-\\xFF]*\")\\s*(,|$)");
  private static final Pattern REVISION = Pattern.compile("\"([1-9][0-9]{0,8})\"");

  public IfMatch {
    tags = List.copyOf(tags);
  }

  /**
   * The header of a request, if it has one.
   *
   * @throws ProblemException 400 if it is neither {@code *} nor a list of tags
   */
  public static Optional<IfMatch> of(Context context) {
    String header =
        String.join(", ", Collections.list(context.req().getHeaders(Header.IF_MATCH))).strip();
    return header.isEmpty() ? Optional.empty() : Optional.of(parsed(header));
  }

  /**
   * The header of a request that replaces something.
   *
   * @param what has the tag, as in {@code the account as you read it}
   * @throws ProblemException 428 if there is none
   */
  public static IfMatch required(Context context, String what) {
    return of(context).orElseThrow(() -> missing(what));
  }

  public static ProblemException missing(String what) {
    return Problem.of(
            ProblemType.REVISION_REQUIRED,
            "Send the header If-Match with the ETag of %s, so that you don't overwrite what you haven't seen."
                .formatted(what))
        .exception();
  }

  private static IfMatch parsed(String header) {
    if (header.equals("*")) {
      return new IfMatch(true, List.of());
    }
    List<String> strong = new ArrayList<>();
    Matcher tag = TAG.matcher(header);
    int end = 0;
    while (end < header.length() && tag.find(end) && tag.start() == end) {
      if (tag.group(1) == null) {
        strong.add(tag.group(2));
      }
      end = tag.end();
    }
    if (end < header.length()) {
      throw wrong("If-Match must be ETags in their quotes, as in \"2\", not %s.", header);
    }
    return new IfMatch(false, strong);
  }

  private static ProblemException wrong(String message, String header) {
    return Problem.at(
            ProblemType.INVALID_PARAMETER, Header.IF_MATCH, message.formatted(Quoted.of(header)))
        .exception();
  }

  /** Whether the sender knows the state that has this tag, or doesn't mind. */
  public boolean permits(String entityTag) {
    return any || tags.contains(entityTag);
  }

  /** The greatest number that a tag begins with, as revisions and editions have it. */
  public OptionalInt greatest(Pattern numbered) {
    return tags.stream()
        .map(numbered::matcher)
        .filter(Matcher::matches)
        .mapToInt(match -> Integer.parseInt(match.group(1)))
        .max();
  }

  /**
   * The revision of a contribution that its reader or author has seen; of several, the last. None
   * has the number 0, which stands for tags that no revision ever had.
   *
   * @throws ProblemException 428 if the header is missing; 400 for {@code *}: nobody should decide
   *     on, or overwrite, what they never saw
   */
  public static int revision(Context context) {
    IfMatch seen = required(context, "the contribution as you read it, as in If-Match: \"2\"");
    if (seen.any()) {
      throw wrong("If-Match must name the revision that you read, as in \"2\", not %s.", "*");
    }
    return seen.greatest(REVISION).orElse(0);
  }

  public static String entityTag(int revision) {
    return "\"" + revision + "\"";
  }
}
