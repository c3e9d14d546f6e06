package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.Actor;
import org.hedgerow.pictures.PictureIntake;
import org.hedgerow.review.SendPicture;
import org.hedgerow.review.Upload;
import org.hedgerow.web.security.RateLimit;

/** Takes the picture that a form sends along. */
final class SentPicture {
  private final PictureIntake intake = new PictureIntake();
  private final SendPicture sendPicture;
  private final RateLimit pace;

  SentPicture(SendPicture sendPicture, RateLimit pace) {
    this.sendPicture = sendPicture;
    this.pace = pace;
  }

  /**
   * The fields with the id of the picture; the same fields where none was chosen.
   *
   * @throws org.hedgerow.pictures.UnusablePictureException if it can't be used
   * @throws org.hedgerow.web.security.TooFastException if there were too many
   */
  Fields take(Context context, Actor actor, Fields fields) {
    return chosen(context)
        .map(file -> upload(context, actor, file))
        .map(upload -> with(fields, upload))
        .orElse(fields);
  }

  private Upload upload(Context context, Actor actor, UploadedFile file) {
    pace.count(context);
    return sendPicture.execute(actor, intake.take(bytes(file)));
  }

  private static Optional<UploadedFile> chosen(Context context) {
    return context.isMultipartFormData()
        ? Optional.ofNullable(context.uploadedFile("file")).filter(file -> file.size() > 0)
        : Optional.empty();
  }

  /** One byte more than is allowed is enough to know that it is too large. */
  private static byte[] bytes(UploadedFile file) {
    try (InputStream content = file.content()) {
      return content.readNBytes(PictureIntake.MAX_BYTES + 1);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Fields with(Fields fields, Upload upload) {
    Map<String, List<String>> sent = new LinkedHashMap<>(fields.sent());
    sent.put("upload", List.of(upload.id()));
    return new Fields(sent);
  }
}
