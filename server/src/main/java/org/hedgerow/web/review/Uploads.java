package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.function.Function;
import org.hedgerow.pictures.CleanPicture;
import org.hedgerow.pictures.UnusablePictureException;
import org.hedgerow.review.ReviewServices;
import org.hedgerow.review.Upload;
import org.hedgerow.web.Routes;
import org.hedgerow.web.http.ApiRequest;
import org.hedgerow.web.http.PictureAnswer;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** {@code POST /pictures} and {@code GET /uploads/{id}}: pictures that people send. */
final class Uploads {
  private final ReviewServices services;
  private final Function<byte[], CleanPicture> pictures;

  Uploads(ReviewServices services, Function<byte[], CleanPicture> pictures) {
    this.services = services;
    this.pictures = pictures;
  }

  /**
   * A picture as it was kept.
   *
   * @param upload by which a proposal names it
   * @param bytes how many there are
   */
  record View(String upload, String href, String mediaType, int width, int height, int bytes) {
    static View of(Upload upload) {
      CleanPicture picture = upload.picture();
      return new View(
          upload.id(),
          href(upload),
          picture.mediaType(),
          picture.width(),
          picture.height(),
          picture.content().size());
    }

    private static String href(Upload upload) {
      return "%s/uploads/%s".formatted(Routes.API, upload.id());
    }
  }

  void send(ApiRequest request) {
    byte[] sent = PictureBody.read(request.context());
    Upload upload = services.sendPicture().execute(request.actor(), cleaned(sent));
    View view = View.of(upload);
    request.context().status(201).header(Header.LOCATION, view.href()).json(view);
  }

  private CleanPicture cleaned(byte[] sent) {
    try {
      return pictures.apply(sent);
    } catch (UnusablePictureException unusable) {
      throw Problem.of(ProblemType.UNUSABLE_PICTURE, String.valueOf(unusable.getMessage()))
          .exception();
    }
  }

  void show(ApiRequest request) {
    Context context = request.context();
    Upload upload =
        services
            .reviews()
            .upload(request.actor(), context.pathParam("id"))
            .orElseThrow(
                () ->
                    Problem.of(
                            ProblemType.NOT_FOUND,
                            "There is no such picture. Take the address that you got when you sent it.")
                        .exception());
    PictureAnswer.send(context, upload.picture().mediaType(), upload.picture().content());
  }
}
