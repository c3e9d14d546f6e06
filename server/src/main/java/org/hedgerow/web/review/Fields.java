package org.hedgerow.web.review;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** What a form sent; what is missing is empty. */
record Fields(Map<String, List<String>> sent) {
  private static final int MAX_LENGTH = 4_000;
  private static final int MAX = 500;

  static Fields of(Context context) {
    return new Fields(context.formParamMap());
  }

  /** Cut off where nobody types on. */
  String text(String name) {
    return all(name).stream().findFirst().orElse("");
  }

  List<String> all(String name) {
    return sent.getOrDefault(name, List.of()).stream()
        .limit(MAX)
        .map(text -> text.length() > MAX_LENGTH ? text.substring(0, MAX_LENGTH) : text)
        .map(String::strip)
        .toList();
  }

  boolean has(String name) {
    return sent.containsKey(name);
  }

  /** A whole number; 0, which nothing has, if it is none. */
  int number(String name) {
    return number(text(name), 0);
  }

  static int number(String text, int otherwise) {
    return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : otherwise;
  }
}
