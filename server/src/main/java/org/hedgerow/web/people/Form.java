package org.hedgerow.web.people;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.operations.FieldError;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.operations.Role;

/**
 * A form as it is shown: what was typed so far, and what is wrong with it.
 *
 * @param token by which we know it when it comes back
 * @param errors by field
 */
record Form(String token, Map<String, String> typed, Map<String, String> errors) {
  private static final int MAX_FIELD_LENGTH = 2_000;

  static Form fresh(String token) {
    return new Form(token, Map.of(), Map.of());
  }

  static Form refused(String token, Map<String, String> typed, RejectedException refused) {
    Map<String, String> errors = new LinkedHashMap<>();
    for (FieldError error : refused.errors()) {
      errors.putIfAbsent(error.field(), error.message());
    }
    return new Form(token, typed, errors);
  }

  String typed(String field) {
    return typed.getOrDefault(field, "");
  }

  String error(String field) {
    return errors.getOrDefault(field, "");
  }

  boolean hasErrors() {
    return !errors.isEmpty();
  }

  /** What was sent in a field; empty if nothing. Passwords may be long, and are refused later. */
  static String sent(Context context, String field) {
    return Optional.ofNullable(context.formParam(field)).orElse("");
  }

  /** Cut off where nobody types on. */
  static String shortened(Context context, String field) {
    String text = sent(context, field);
    return text.length() > MAX_FIELD_LENGTH ? text.substring(0, MAX_FIELD_LENGTH) : text;
  }

  /** A whole number; -1, which nothing has, if it is none. */
  static int number(String text) {
    return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : -1;
  }

  static int number(Context context, String field) {
    return number(sent(context, field));
  }

  /** The role sent; a visitor's, which everything refuses, if it is none. */
  static Role role(Context context) {
    return Role.ofAccount(sent(context, "role")).orElse(Role.VISITOR);
  }
}
