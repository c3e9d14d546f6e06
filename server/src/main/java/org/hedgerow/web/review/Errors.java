package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.accounts.FieldFault;

/** What is wrong, to be shown beside the field that it is about. */
record Errors(List<FieldFault> faults) {
  static final Errors NONE = new Errors(List.of());

  Errors {
    faults = List.copyOf(faults);
  }

  /** The first that is about a field; an empty text if there is none. */
  String at(String field) {
    return faults.stream()
        .filter(fault -> fault.field().equals(field))
        .map(FieldFault::message)
        .findFirst()
        .orElse("");
  }

  /** The first that is about a field or a part of it. */
  String under(String field) {
    return faults.stream()
        .filter(fault -> fault.field().equals(field) || fault.field().startsWith(field + "."))
        .map(FieldFault::message)
        .findFirst()
        .orElse("");
  }

  boolean isEmpty() {
    return faults.isEmpty();
  }
}
