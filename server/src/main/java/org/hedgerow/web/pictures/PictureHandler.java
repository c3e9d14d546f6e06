package org.hedgerow.web.pictures;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.web.http.PictureAnswer;
import org.hedgerow.web.http.Sending;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.hedgerow.web.query.Parameters;
import org.hedgerow.web.view.PictureView;

/**
 * {@code GET /pictures/{id}}: a picture. Its address stays; a version in it lets browsers keep the
 * picture for good and still see a new one.
 */
public final class PictureHandler implements Handler {

  public static final String PATH = "/pictures/{id}";

  private static final String ID = "id";

  private final Supplier<Lexicon> current;

  public PictureHandler(Supplier<Lexicon> current) {
    this.current = current;
  }

  @Override
  public void handle(Context context) {
    requireNothingElse(context);
    String id = context.pathParam(ID);
    Picture picture = current.get().pictures().picture(id).orElseThrow(PictureHandler::missing);
    String tag = "\"" + picture.version() + "\"";
    boolean forGood = picture.version().equals(context.queryParam(PictureView.VERSION));
    PictureAnswer.seal(context);
    Sending.file(
        context,
        picture.content().bytes().toArray(),
        PictureAnswer.contentType(picture.mediaType()),
        tag,
        forGood ? Sending.FOR_GOOD : Sending.FOR_A_DAY);
  }

  private static void requireNothingElse(Context context) {
    String query = Optional.ofNullable(context.queryString()).orElse("");
    Parameters.parsed(query, List.of(PictureView.VERSION)).errors().throwIfAny();
  }

  private static ProblemException missing() {
    return Problem.of(
            ProblemType.NOT_FOUND,
            "There is no such picture. Take the address from the word that has it.")
        .exception();
  }
}
