package org.hedgerow.web;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import org.hedgerow.web.problems.Problem;
import org.hedgerow.web.problems.ProblemException;
import org.hedgerow.web.problems.ProblemType;
import org.jspecify.annotations.Nullable;

/**
 * Reads request bodies. Whatever is wrong with one becomes a problem; Jackson's words, full of
 * class names, stay inside.
 */
public final class JsonBody {
  private final ObjectMapper mapper;

  public JsonBody(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /**
   * @throws ProblemException if the body is no JSON, or no JSON of this shape
   */
  public <T> T read(Context context, Class<T> type) {
    requireJson(context);
    T value = parse(context.bodyAsBytes(), type);
    if (value == null) {
      throw Problem.of(ProblemType.INVALID_BODY, "The body is null; send an object.").exception();
    }
    return value;
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

  private <T> @Nullable T parse(byte[] body, Class<T> type) {
    try {
      return mapper.readValue(body, type);
    } catch (JsonMappingException problem) {
      throw unexpected(problem).exception();
    } catch (JsonProcessingException problem) {
      throw malformed(problem.getLocation()).exception();
    } catch (IOException problem) {
      throw malformed(null).exception();
    }
  }

  private static Problem malformed(@Nullable JsonLocation location) {
    String place =
        location == null
            ? ""
            : ", at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    return Problem.of(ProblemType.INVALID_JSON, "The body is no JSON" + place + ".");
  }

  private static Problem unexpected(JsonMappingException problem) {
    String place = place(problem);
    if (place.isEmpty()) {
      return Problem.of(ProblemType.INVALID_BODY, "The body must be one JSON object.");
    }
    return Problem.at(ProblemType.INVALID_BODY, place, message(problem, place));
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
    StringBuilder place = new StringBuilder();
    for (JsonMappingException.Reference step : problem.getPath()) {
      if (step.getFieldName() == null) {
        place.append('[').append(step.getIndex()).append(']');
      } else {
        place.append(place.isEmpty() ? "" : ".").append(step.getFieldName());
      }
    }
    return place.toString();
  }
}
