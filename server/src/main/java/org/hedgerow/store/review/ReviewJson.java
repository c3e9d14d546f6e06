package org.hedgerow.store.review;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.List;
import org.hedgerow.review.Content;
import org.hedgerow.review.ContributionFinding;

/** What contributions say, as JSON in the database. */
final class ReviewJson {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addModule(new Jdk8Module())
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private ReviewJson() {}

  static String of(Object value) {
    try {
      return JSON.writeValueAsString(value);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  static Content content(String json) {
    return read(json, new TypeReference<Content>() {});
  }

  static List<ContributionFinding> remarks(String json) {
    return read(json, new TypeReference<List<ContributionFinding>>() {});
  }

  private static <T> T read(String json, TypeReference<T> type) {
    try {
      return JSON.readValue(json, type);
    } catch (JsonProcessingException problem) {
      throw new IllegalStateException("a contribution can't be read", problem);
    }
  }
}
