package org.hedgerow.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * Reads a body up to some length, and no further.
 *
 * @param most how many bytes
 * @param advice what is said of a longer one
 */
public record LimitedBody(int most, String advice) {
  private static final String READ = "hedgerow.body";

  /** Read again, it is the same. */
  public byte[] read(Context context) {
    byte[] known = context.attribute(READ);
    if (known != null) {
      return known;
    }
    requireAtMost(context, most);
    try (InputStream body = context.bodyInputStream()) {
      byte[] bytes = read(body);
      context.attribute(READ, bytes);
      return bytes;
    } catch (IOException broken) {
      throw brokenOff();
    }
  }

  public byte[] read(InputStream body) throws IOException {
    byte[] bytes = body.readNBytes(most + 1);
    if (bytes.length > most) {
      throw tooLarge();
    }
    return bytes;
  }

  /** By what it says of itself, before anything is read. */
  public void requireAtMost(Context context, int bytes) {
    if (context.contentLength() > bytes) {
      throw tooLarge();
    }
  }

  private ProblemException tooLarge() {
    return Problem.of(ProblemType.BODY_TOO_LARGE, advice).exception();
  }

  public static ProblemException brokenOff() {
    return Problem.of(
            ProblemType.BAD_REQUEST, "The body broke off before its end. Send it once more.")
        .exception();
  }
}
