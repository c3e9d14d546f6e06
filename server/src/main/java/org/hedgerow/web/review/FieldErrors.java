package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.operations.FieldError;

/** What is wrong, to be shown beside the field that it is about. */
record FieldErrors(List<FieldError> errors) {
  static final FieldErrors NONE = new FieldErrors(List.of());

  FieldErrors {
    errors = List.copyOf(errors);
  }

  /** The first that is about a field; an empty text if there is none. */
  String at(String field) {
    return errors.stream()
        .filter(error -> error.field().equals(field))
        .map(FieldError::message)
        .findFirst()
        .orElse("");
  }

  /** The first that is about a field or a part of it. */
  String under(String field) {
    return errors.stream()
        .filter(error -> error.field().equals(field) || error.field().startsWith(field + "."))
        .map(FieldError::message)
        .findFirst()
        .orElse("");
  }

  boolean isEmpty() {
    return errors.isEmpty();
  }
}
