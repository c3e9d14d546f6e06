package org.hedgerow.web.api;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;

/**
 * {@code GET /pictures/{id}}: a picture. Its address stays; a version in it lets browsers keep the
 * picture for good and still see a new one.
 */
final class PictureHandler implements Handler {

  static final String PATH = "/pictures/{id}";

  private static final String ID = "id";
  private static final String VERSION = "v";
  private static final String FOR_GOOD = "public, max-age=31536000, immutable";
  private static final String FOR_A_DAY = "public, max-age=86400";

  private final Supplier<Lexicon> current;

  PictureHandler(Supplier<Lexicon> current) {
    this.current = current;
  }

  static String address(Picture picture) {
    return "%s/pictures/%s?%s=%s"
        .formatted(ApiRoutes.BASE, picture.id(), VERSION, picture.version());
  }

  @Override
  public void handle(Context context) {
    requireNothingElse(context);
    String id = context.pathParam(ID);
    Picture picture = current.get().pictures().picture(id).orElseThrow(PictureHandler::missing);
    String tag = "\"" + picture.version() + "\"";
    boolean forGood = picture.version().equals(context.queryParam(VERSION));
    context.header(Header.CACHE_CONTROL, forGood ? FOR_GOOD : FOR_A_DAY).header(Header.ETAG, tag);
    PictureAnswer.seal(context);
    if (Conditions.alreadyHas(ifNoneMatch(context), tag)) {
      context.status(304);
    } else {
      PictureAnswer.send(context, picture.mediaType(), picture.content().bytes());
    }
  }

  private static void requireNothingElse(Context context) {
    String query = Optional.ofNullable(context.queryString()).orElse("");
    Parameters.parsed(query, List.of(VERSION)).faults().throwIfAny();
  }

  private static String ifNoneMatch(Context context) {
    return Optional.ofNullable(context.header(Header.IF_NONE_MATCH)).orElse("");
  }

  private static ProblemException missing() {
    return Problem.of(
            ProblemType.NOT_FOUND,
            "There is no such picture. Take the address from the word that has it.")
        .exception();
  }
}
