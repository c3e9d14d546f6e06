package org.hedgerow.web.api;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes views. */
final class Json {

  private final ObjectMapper mapper;

  Json(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** One object on a line. */
  byte[] lines(List<?> views) {
    ByteArrayOutputStream lines = new ByteArrayOutputStream();
    for (Object view : views) {
      lines.writeBytes(bytes(view));
      lines.write('\n');
    }
    return lines.toByteArray();
  }

  String text(Object view) {
    return new String(bytes(view), StandardCharsets.UTF_8);
  }

  byte[] bytes(Object view) {
    try {
      return mapper.writeValueAsBytes(view);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
