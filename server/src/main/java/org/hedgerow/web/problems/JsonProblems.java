package org.hedgerow.web.problems;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import io.javalin.http.Header;

/** Writes problems as {@code application/problem+json}. */
public final class JsonProblems implements ProblemWriter {
  static final String MEDIA_TYPE = "application/problem+json";

  private final ObjectMapper mapper;

  public JsonProblems(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  @Override
  public void write(Context context, Problem problem) {
    context.status(problem.status());
    context.header(Header.CACHE_CONTROL, "no-store");
    context.contentType(MEDIA_TYPE).result(bytes(problem));
  }

  byte[] bytes(Problem problem) {
    try {
      return mapper.writeValueAsBytes(ProblemBody.of(problem));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
