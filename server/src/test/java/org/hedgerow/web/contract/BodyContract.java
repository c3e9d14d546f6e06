package org.hedgerow.web.contract;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.StringNode;

/** What the document says of a body, by its media type. */
final class BodyContract {
  private static final String LINES = "application/x-ndjson";
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final Schemas schemas;

  BodyContract(Schemas schemas) {
    this.schemas = schemas;
  }

  /**
   * @param content the media types that the document lists
   */
  List<String> breaches(Place content, Optional<String> mediaType, String body) {
    return typeBreach(content, mediaType)
        .map(List::of)
        .orElseGet(() -> bodyBreaches(content, mediaType.orElseThrow(), body));
  }

  /** What is wrong with the media type alone. */
  static Optional<String> typeBreach(Place content, Optional<String> mediaType) {
    if (mediaType.isEmpty()) {
      return Optional.of("has no Content-Type");
    }
    return mediaType
        .filter(type -> !content.child(type).exists())
        .map(type -> "has the content type %s; listed: %s".formatted(type, content.names()));
  }

  private List<String> bodyBreaches(Place content, String mediaType, String body) {
    Place listed = content.child(mediaType);
    if (mediaType.equals(LINES)) {
      return lineBreaches(new Place(listed.document(), listed.pointer() + "/x-item-schema"), body);
    }
    return mediaType.endsWith("json")
        ? jsonBreaches(listed.schema(), body)
        : schemas.breaches(listed.schema(), StringNode.valueOf(body));
  }

  private List<String> lineBreaches(Place schema, String body) {
    List<String> lines = body.lines().toList();
    Stream<String> unfinished =
        body.isEmpty() || body.endsWith("\n")
            ? Stream.empty()
            : Stream.of("its last line has no end");
    Stream<String> wrong =
        IntStream.range(0, lines.size())
            .boxed()
            .flatMap(
                index ->
                    jsonBreaches(schema, lines.get(index)).stream()
                        .map(breach -> "line %d: %s".formatted(index + 1, breach)));
    return Stream.concat(unfinished, wrong).toList();
  }

  private List<String> jsonBreaches(Place schema, String body) {
    try {
      JsonNode value = JSON.readTree(body);
      return value.isMissingNode() ? List.of("is empty") : schemas.breaches(schema, value);
    } catch (JacksonException problem) {
      return List.of("is no JSON: " + problem.getOriginalMessage());
    }
  }
}
