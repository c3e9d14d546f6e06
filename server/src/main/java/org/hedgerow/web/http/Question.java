package org.hedgerow.web.http;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A question that was understood.
 *
 * @param key the question in one way, however it was asked
 * @param answer works the answer out
 */
public record Question(String key, Function<Format, Body> answer) {

  /**
   * What an answer says.
   *
   * @param total how many entries the whole list has; empty for what is no list
   * @param next where it goes on, a relative reference
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  public record Body(byte[] bytes, OptionalInt total, Optional<String> next) {
    public static Body whole(byte[] bytes) {
      return new Body(bytes, OptionalInt.empty(), Optional.empty());
    }

    private Body marked() {
      return new Body(ByteOrderMark.before(bytes), total, next);
    }
  }

  /** A question that is answered in JSON only, all at once. */
  public static Question json(String key, Json json, Supplier<Object> view) {
    return new Question(key, format -> Body.whole(json.bytes(view.get())));
  }

  /** The same question, if wanted with the mark of UTF-8 before its answer. */
  Question marked(boolean wanted) {
    return wanted ? new Question(key + "&bom", format -> answer.apply(format).marked()) : this;
  }
}
