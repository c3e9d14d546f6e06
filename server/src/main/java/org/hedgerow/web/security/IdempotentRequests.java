package org.hedgerow.web.security;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.Header;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.operations.IdempotencyStore;
import org.hedgerow.operations.IdempotencyStore.Kept;
import org.hedgerow.operations.IdempotencyStore.Outcome;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemType;

/**
 * Makes requests that store something safe to send again: with the header {@code Idempotency-Key}
 * (draft-ietf-httpapi-idempotency-key-header-07) the first answer comes again and nothing more is
 * stored. What was refused stored nothing, and is tried anew.
 */
public final class IdempotentRequests {
  private static final String HEADER = "Idempotency-Key";

  /** A string in quotes as the draft has it, or the same without them, as many clients send it. */
  private static final Pattern KEY = Pattern.compile("\"([ !#-\\[\\]-~]{1,200})\"|([!#-~]{1,200})");

  private final IdempotencyStore answers;

  public IdempotentRequests(IdempotencyStore answers) {
    this.answers = answers;
  }

  /** A handler of requests whose body is JSON. */
  public Handler handler(Handler handler) {
    return context -> run(context, Context::bodyAsBytes, () -> handle(handler, context));
  }

  private static void handle(Handler handler, Context context) {
    try {
      handler.handle(context);
    } catch (RuntimeException problem) {
      throw problem;
    } catch (Exception checked) {
      throw new IllegalStateException(checked);
    }
  }

  /**
   * Does some work and answers, or answers as before.
   *
   * @param payload the body; it is read before anything is locked
   */
  public void run(Context context, Function<Context, byte[]> payload, Runnable work) {
    Optional<String> header = Optional.ofNullable(context.header(HEADER));
    if (header.isEmpty()) {
      work.run();
    } else {
      run(context, new ResponseEncryption(key(header.get())), payload.apply(context), work);
    }
  }

  private static String key(String header) {
    Matcher key = KEY.matcher(header.strip());
    if (!key.matches()) {
      throw Problem.at(
              ProblemType.INVALID_PARAMETER,
              HEADER,
              "Idempotency-Key must be 1 to 200 visible characters in quotes, best a UUID, another for every new request.")
          .exception();
    }
    return key.group(1) == null ? key.group(2) : key.group(1);
  }

  private void run(Context context, ResponseEncryption sealing, byte[] payload, Runnable work) {
    int account = Identity.of(context).actor().requireAccount().id();
    IdempotencyStore.Request request =
        new IdempotencyStore.Request(account, sealing.hash(), fingerprint(context, payload));
    Outcome outcome =
        answers.once(
            request,
            () -> {
              work.run();
              return kept(context, sealing);
            });
    answer(context, sealing, outcome);
  }

  private static void answer(Context context, ResponseEncryption sealing, Outcome outcome) {
    if (outcome instanceof Outcome.Repeated repeated) {
      send(context, repeated.answer(), sealing);
    } else if (outcome instanceof Outcome.Running) {
      context.header(Header.RETRY_AFTER, "1");
      throw Problem.of(
              ProblemType.STILL_RUNNING,
              "The same request is being worked on at this moment. Send it again in a second to get its answer.")
          .exception();
    } else if (outcome instanceof Outcome.Reused) {
      throw Problem.at(
              ProblemType.KEY_REUSED,
              HEADER,
              "This Idempotency-Key was used for another request. Give every new request a key of its own.")
          .exception();
    }
  }

  private static void send(Context context, Kept answer, ResponseEncryption sealing) {
    answer.location().ifPresent(location -> context.header(Header.LOCATION, location));
    answer.entityTag().ifPresent(tag -> context.header(Header.ETAG, tag));
    context
        .status(answer.status())
        .contentType(answer.mediaType())
        .result(sealing.open(answer.body()));
  }

  private static Kept kept(Context context, ResponseEncryption sealing) {
    byte[] body = body(context);
    context.result(body);
    return new Kept(
        context.statusCode(),
        Optional.ofNullable(context.res().getHeader(Header.LOCATION)),
        Optional.ofNullable(context.res().getHeader(Header.ETAG)),
        String.valueOf(context.res().getContentType()),
        sealing.seal(body));
  }

  private static byte[] body(Context context) {
    InputStream result = context.resultInputStream();
    try (InputStream body = result == null ? new ByteArrayInputStream(new byte[0]) : result) {
      return body.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Of all that says what is asked for. */
  private static String fingerprint(Context context, byte[] payload) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      String line =
          String.join(
              "\n",
              context.method().name(),
              context.path(),
              String.valueOf(context.queryString()),
              String.valueOf(context.header(Header.IF_MATCH)),
              String.valueOf(context.header(Header.ACCEPT)),
              "");
      digest.update(line.getBytes(UTF_8));
      return HexFormat.of().formatHex(digest.digest(payload));
    } catch (GeneralSecurityException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
