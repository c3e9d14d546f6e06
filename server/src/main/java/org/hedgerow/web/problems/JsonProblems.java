package org.hedgerow.web.problems;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.Header;
import java.util.Locale;
import java.util.Optional;

/** Writes problems as {@code application/problem+json}. */
public final class JsonProblems implements ProblemWriter {
  public static final String MEDIA_TYPE = "application/problem+json";

  private static final String CHALLENGE = "Bearer realm=\"hedgerow\"";

  private final ObjectMapper mapper;

  public JsonProblems(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  @Override
  public void write(Context context, Problem problem) {
    context.status(problem.status());
    if (problem.type() == ProblemType.NOT_SIGNED_IN) {
      context.header(Header.WWW_AUTHENTICATE, challenge(context));
    }
    context.header(Header.CACHE_CONTROL, "no-store");
    context.contentType(MEDIA_TYPE).result(bytes(problem));
  }

  /** How programs sign in (RFC 6750, section 3). */
  private static String challenge(Context context) {
    String sent = Optional.ofNullable(context.header(Header.AUTHORIZATION)).orElse("");
    return sent.toLowerCase(Locale.ROOT).startsWith("bearer ")
        ? CHALLENGE + ", error=\"invalid_token\""
        : CHALLENGE;
  }

  public byte[] bytes(Problem problem) {
    try {
      return mapper.writeValueAsBytes(ProblemBody.of(problem));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
