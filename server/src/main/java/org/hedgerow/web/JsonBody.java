package org.hedgerow.web;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.InvalidTypeIdException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;

/**
 * Reads request bodies. Whatever is wrong with one becomes a problem; Jackson's words, full of
 * class names, stay inside.
 */
public final class JsonBody {
  /** How Jackson's message begins where strict detection of duplicates finds one. */
  private static final String DUPLICATE = "Duplicate field";

  private static final String KIND = "kind";

  private final ObjectMapper mapper;
  private final boolean kept;

  public JsonBody(ObjectMapper mapper) {
    this(mapper, /* kept= */ false);
  }

  private JsonBody(ObjectMapper mapper, boolean kept) {
    this.mapper = mapper;
    this.kept = kept;
  }

  /** For bodies that are written down: they hold nothing but text. */
  public static JsonBody toKeep(ObjectMapper mapper) {
    return new JsonBody(mapper, /* kept= */ true);
  }

  /**
   * @throws ProblemException if the body is no JSON, or no JSON of this shape
   */
  public <T> T read(Context context, Class<T> type) {
    requireJson(context);
    Charset charset = RequestChecks.charset(context);
    return parse(bytes(context), charset, type);
  }

  /** Javalin is written in Kotlin and throws what it does not declare, here Jetty's exceptions. */
  private static byte[] bytes(Context context) {
    try {
      return context.bodyAsBytes();
    } catch (HttpResponseException refused) {
      throw refused;
    } catch (Exception broken) {
      throw Problem.of(
              ProblemType.BAD_REQUEST, "The body broke off before its end. Send it once more.")
          .exception();
    }
  }

  private static void requireJson(Context context) {
    String type = String.valueOf(context.contentType()).toLowerCase(Locale.ROOT);
    if (!type.startsWith("application/json") && !type.contains("+json")) {
      throw Problem.of(
              ProblemType.UNSUPPORTED_MEDIA_TYPE,
              "Send JSON, with the header Content-Type: application/json.")
          .exception();
    }
  }

  private <T> T parse(byte[] body, Charset charset, Class<T> type) {
    try {
      JsonNode tree = tree(body, charset);
      refuseNulls(tree, "");
      if (kept) {
        refuseOtherThanText(tree, "");
      }
      return mapper.treeToValue(tree, type);
    } catch (JsonMappingException problem) {
      throw unexpected(problem).exception();
    } catch (JsonProcessingException problem) {
      throw malformed(problem).exception();
    } catch (IOException problem) {
      throw Problem.of(ProblemType.INVALID_JSON, "The body ends too early.").exception();
    }
  }

  /** Unicode in any form tells itself; whoever sends something else must name it. */
  private JsonNode tree(byte[] body, Charset charset) throws IOException {
    return charset.name().startsWith("UTF-")
        ? mapper.readTree(body)
        : mapper.readTree(new String(body, charset));
  }

  /** A null could mean anything; whoever has nothing to say leaves the field out. */
  private static void refuseNulls(JsonNode node, String place) {
    if (node.isNull() || node.isMissingNode()) {
      throw nothing(node, place).exception();
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      refuseNulls(node.path(i), "%s[%d]".formatted(place, i));
    }
    node.properties()
        .forEach(field -> refuseNulls(field.getValue(), joined(place, field.getKey())));
  }

  private static void refuseOtherThanText(JsonNode node, String place) {
    if (node.isTextual() && !isText(node.textValue())) {
      throw Problem.at(
              ProblemType.INVALID_BODY,
              place.isEmpty() ? "body" : place,
              "%s has a character in it that isn't text.".formatted(place))
          .exception();
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      refuseOtherThanText(node.path(i), "%s[%d]".formatted(place, i));
    }
    node.properties()
        .forEach(field -> refuseOtherThanText(field.getValue(), joined(place, field.getKey())));
  }

  /** Neither a null character nor half of a pair can be written down anywhere. */
  private static boolean isText(String text) {
    return text.codePoints()
        .noneMatch(
            character -> character == 0 || Character.getType(character) == Character.SURROGATE);
  }

  private static Problem nothing(JsonNode node, String place) {
    if (node.isMissingNode()) {
      return Problem.of(ProblemType.INVALID_JSON, "The body is empty; send a JSON object.");
    }
    return place.isEmpty()
        ? Problem.of(ProblemType.INVALID_BODY, "The body is null; send an object.")
        : Problem.at(
            ProblemType.INVALID_BODY,
            place,
            "%s is null. Give it a value, or leave it out.".formatted(place));
  }

  private static String joined(String place, String field) {
    return place.isEmpty() ? field : place + "." + field;
  }

  private static Problem malformed(JsonProcessingException problem) {
    JsonLocation location = problem.getLocation();
    String place =
        location == null
            ? ""
            : ", at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    String wrong =
        problem.getOriginalMessage().startsWith(DUPLICATE)
            ? "A field of the body comes twice"
            : "The body is no JSON";
    return Problem.of(ProblemType.INVALID_JSON, wrong + place + ".");
  }

  private static Problem unexpected(JsonMappingException problem) {
    String place = place(problem);
    if (problem instanceof InvalidTypeIdException unknown) {
      return unknownKind(unknown, place);
    }
    if (place.isEmpty()) {
      return Problem.of(ProblemType.INVALID_BODY, "The body must be one JSON object.");
    }
    return Problem.at(ProblemType.INVALID_BODY, place, message(problem, place));
  }

  /** Of an object that comes in several kinds, told apart by one field. */
  private static Problem unknownKind(InvalidTypeIdException unknown, String place) {
    JsonSubTypes kinds = unknown.getBaseType().getRawClass().getAnnotation(JsonSubTypes.class);
    String names =
        kinds == null
            ? ""
            : Arrays.stream(kinds.value())
                .map(JsonSubTypes.Type::name)
                .collect(Collectors.joining(", "));
    String field = joined(place, KIND);
    return Problem.at(
        ProblemType.INVALID_BODY, field, "%s must be one of %s.".formatted(field, names));
  }

  private static String message(JsonMappingException problem, String place) {
    if (problem instanceof UnrecognizedPropertyException unknown) {
      return "There is no field %s. Known here: %s."
          .formatted(place, String.join(", ", names(unknown)));
    }
    if (problem instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
      return "%s must be %s.".formatted(place, kind(mismatch.getTargetType()));
    }
    return "%s has a value that isn't allowed.".formatted(place);
  }

  private static Iterable<String> names(UnrecognizedPropertyException unknown) {
    Collection<Object> known = unknown.getKnownPropertyIds();
    return known == null
        ? java.util.List.of()
        : known.stream().map(String::valueOf).sorted().toList();
  }

  private static String kind(Class<?> type) {
    if (CharSequence.class.isAssignableFrom(type) || type.isEnum()) {
      return "text";
    }
    if (Collection.class.isAssignableFrom(type) || type.isArray()) {
      return "a list";
    }
    if (type == boolean.class || type == Boolean.class) {
      return "true or false";
    }
    if (type.isPrimitive() || Number.class.isAssignableFrom(type)) {
      return "a number";
    }
    return Map.class.isAssignableFrom(type) || type.isRecord()
        ? "an object"
        : "another kind of value";
  }

  /** As in {@code words[2]} or {@code rules.doubled}. */
  private static String place(JsonMappingException problem) {
    String place = "";
    for (JsonMappingException.Reference step : problem.getPath()) {
      place =
          step.getFieldName() == null
              ? "%s[%d]".formatted(place, step.getIndex())
              : joined(place, step.getFieldName());
    }
    return place;
  }
}
