package org.hedgerow.web.curriculum;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.hedgerow.lexicon.Editions;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.operations.StaleUpdateException;
import org.hedgerow.web.http.IfMatch;

/**
 * What whoever puts a named set in place, or takes it away, says they have seen: in {@code
 * If-Match} the {@code ETag} of any answer out of an edition, all of which begin with its number;
 * or in {@code If-None-Match: *} that there is none of this name yet (RFC 9110, section 13.1).
 */
final class SeenEdition {
  private static final Pattern TAG = Pattern.compile("\"([1-9][0-9]{0,8})(-[0-9A-Za-z_-]*)?\"");

  private final Editions editions;
  private final Optional<IfMatch> match;
  private final boolean onlyNew;

  private SeenEdition(Editions editions, Optional<IfMatch> match, boolean onlyNew) {
    this.editions = editions;
    this.match = match;
    this.onlyNew = onlyNew;
  }

  /**
   * @throws org.hedgerow.web.problems.ProblemException 400 if {@code If-Match} can't be read
   */
  static SeenEdition of(Context context, Editions editions) {
    String ifNoneMatch = Optional.ofNullable(context.header(Header.IF_NONE_MATCH)).orElse("");
    return new SeenEdition(editions, IfMatch.of(context), ifNoneMatch.strip().equals("*"));
  }

  /** The last edition that was seen, if any was. */
  Optional<Lexicon> edition() {
    return match.flatMap(
        header ->
            header.any()
                ? Optional.of(editions.newest())
                : header.greatest(TAG).stream().boxed().findFirst().flatMap(editions::at));
  }

  /**
   * The mark of the set as it was seen, which must still be its mark when it is replaced.
   *
   * @param set finds it in an edition
   * @param mark of a set, or of none
   * @throws StaleUpdateException if it can't be so any more
   * @throws org.hedgerow.web.problems.ProblemException 428 if there is such a set and nothing was
   *     said
   */
  <T> Optional<String> mark(
      Function<Lexicon, Optional<T>> set, Function<Optional<T>, String> mark) {
    if (match.isEmpty()) {
      requireNone(set.apply(editions.newest()));
      return Optional.of(mark.apply(Optional.empty()));
    }
    Optional<T> seen = set.apply(edition().orElseThrow(SeenEdition::changed));
    boolean wrong = onlyNew ? seen.isPresent() : match.get().any() && seen.isEmpty();
    if (wrong) {
      throw changed();
    }
    return Optional.of(mark.apply(seen));
  }

  private void requireNone(Optional<?> present) {
    if (present.isPresent()) {
      throw onlyNew
          ? changed()
          : IfMatch.missing(
              "an answer out of the edition in which you saw it, as in If-Match: \"7\"");
    }
  }

  private static StaleUpdateException changed() {
    return new StaleUpdateException("It isn't as you say you have seen it.");
  }

  static String entityTag(int edition) {
    return "\"" + edition + "\"";
  }
}
