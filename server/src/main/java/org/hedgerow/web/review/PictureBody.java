package org.hedgerow.web.review;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hedgerow.web.http.LimitedBody;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/** Reads a picture that is the body itself, or the one file of a form. */
final class PictureBody {
  /** In bytes; what a form adds around them comes on top. */
  private static final int MAX_BYTES = 5 * 1024 * 1024;

  private static final LimitedBody LIMIT =
      new LimitedBody(
          MAX_BYTES,
          "A picture may have at most 5 MB. Make it smaller: 1,024 pixels on the longer side are"
              + " enough.");
  private static final int AROUND = 10_000;
  private static final String FORM = "multipart/form-data";
  private static final Set<String> PICTURES =
      Set.of("image/png", "image/jpeg", "image/svg+xml", "application/octet-stream");

  private PictureBody() {}

  /** Never more than may be kept, whatever comes. */
  static byte[] read(Context context) {
    String type = mediaType(context);
    if (PICTURES.contains(type)) {
      return LIMIT.read(context);
    }
    if (type.equals(FORM)) {
      LIMIT.requireAtMost(context, MAX_BYTES + AROUND);
      return ofForm(context);
    }
    throw Problem.of(
            ProblemType.UNSUPPORTED_MEDIA_TYPE,
            "Send a picture, with Content-Type: image/png, image/jpeg or image/svg+xml.")
        .exception();
  }

  private static String mediaType(Context context) {
    return String.valueOf(context.contentType()).split(";", 2)[0].strip().toLowerCase(Locale.ROOT);
  }

  private static byte[] ofForm(Context context) {
    List<UploadedFile> files = files(context);
    if (files.size() != 1) {
      throw Problem.of(
              ProblemType.INVALID_BODY,
              "There are %d files in the form. Send one.".formatted(files.size()))
          .exception();
    }
    try (InputStream file = files.get(0).content()) {
      return LIMIT.read(file);
    } catch (IOException broken) {
      throw LimitedBody.brokenOff();
    }
  }

  /** Javalin is written in Kotlin and throws what it doesn't declare, here Jetty's exceptions. */
  private static List<UploadedFile> files(Context context) {
    try {
      return context.uploadedFiles();
    } catch (Exception refused) {
      throw Problem.of(
              ProblemType.BAD_REQUEST,
              "The form can't be read: it is damaged, or has more than 5 MB.")
          .exception();
    }
  }
}
