package org.hedgerow.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.web.edge.Edge;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/** What every request must fulfil before a route looks at it. */
final class RequestChecks {
  private static final Pattern PLAIN = Pattern.compile("[!-$&-~]*+");
  private static final Pattern ESCAPE = Pattern.compile("%(.{0,2})");
  private static final Pattern HEXADECIMAL = Pattern.compile("[0-9A-Fa-f]{2}");
  private static final Pattern CHARSET = Pattern.compile("(?i);\\s*charset\\s*=\\s*\"?([^\";]*)");
  private static final int HEXADECIMAL_RADIX = 16;

  private RequestChecks() {}

  /**
   * @throws ProblemException if the body was refused, if the path isn't percent-encoded UTF-8, or
   *     if the character set of the body is unknown
   */
  static void run(Context context) {
    Edge.requireAccepted(context);
    requireEncoded(context.path());
    charset(context);
  }

  private static void requireEncoded(String path) {
    if (PLAIN.matcher(path).matches()) {
      return;
    }
    Matcher escapes = ESCAPE.matcher(path);
    while (escapes.find()) {
      if (!HEXADECIMAL.matcher(escapes.group(1)).matches()) {
        throw badPath(
            "has a % without two hexadecimal digits after it. Write %25 for the sign itself.");
      }
    }
    if (!isText(bytes(path))) {
      throw badPath("isn't percent-encoded UTF-8 text. Encode it once more.");
    }
  }

  private static byte[] bytes(String path) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(path.length());
    for (int i = 0; i < path.length(); i++) {
      if (path.charAt(i) == '%') {
        bytes.write(Integer.parseInt(path.substring(i + 1, i + 3), HEXADECIMAL_RADIX));
        i += 2;
      } else {
        bytes.writeBytes(String.valueOf(path.charAt(i)).getBytes(StandardCharsets.UTF_8));
      }
    }
    return bytes.toByteArray();
  }

  private static boolean isText(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes))
          .chars()
          .noneMatch(c -> c == 0);
    } catch (CharacterCodingException otherEncoding) {
      return false;
    }
  }

  private static ProblemException badPath(String wrong) {
    return Problem.of(ProblemType.BAD_REQUEST, "The address " + wrong).exception();
  }

  /**
   * The character set that the header {@code Content-Type} names, or UTF-8.
   *
   * @throws ProblemException if it is unknown
   */
  static Charset charset(Context context) {
    String type = context.header("Content-Type");
    if (type == null) {
      return StandardCharsets.UTF_8;
    }
    Matcher named = CHARSET.matcher(type);
    if (!named.find()) {
      return StandardCharsets.UTF_8;
    }
    try {
      return Charset.forName(named.group(1).strip().toUpperCase(Locale.ROOT));
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      throw Problem.of(
              ProblemType.UNSUPPORTED_MEDIA_TYPE,
              "The header Content-Type names a character set that isn't known here. Send UTF-8, with"
                  + " charset=utf-8 or none at all.")
          .exception();
    }
  }
}
