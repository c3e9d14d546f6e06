package org.hedgerow.web.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes views. */
public final class Json {

  private final ObjectMapper mapper;

  public Json(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** One object on a line. */
  public byte[] lines(List<?> views) {
    ByteArrayOutputStream lines = new ByteArrayOutputStream();
    for (Object view : views) {
      lines.writeBytes(bytes(view));
      lines.write('\n');
    }
    return lines.toByteArray();
  }

  public String text(Object view) {
    return new String(bytes(view), StandardCharsets.UTF_8);
  }

  public byte[] bytes(Object view) {
    try {
      return mapper.writeValueAsBytes(view);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
