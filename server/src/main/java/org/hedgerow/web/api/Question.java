package org.hedgerow.web.api;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A question that was understood.
 *
 * @param key the question in one way, however it was asked
 * @param answer works the answer out
 */
record Question(String key, Function<Format, Body> answer) {

  /**
   * What an answer says.
   *
   * @param next where it goes on, a relative reference
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Body(byte[] bytes, Optional<String> next) {}

  /** A question that is answered in JSON only, all at once. */
  static Question json(String key, Json json, Supplier<Object> view) {
    return new Question(key, format -> new Body(json.bytes(view.get()), Optional.empty()));
  }
}
