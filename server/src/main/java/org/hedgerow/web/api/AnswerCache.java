package org.hedgerow.web.api;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Keeps finished answers, as many as fit. What an edition answers never changes, so they only go
 * when others need the room. Thread-safe; a question that several ask at once is worked out once.
 */
final class AnswerCache {

  /** In bytes; a list of 50 words has some 20,000. */
  private static final long MOST_BYTES = 32L * 1024 * 1024;

  private static final long MOST_BYTES_OF_WORDINGS = 4L * 1024 * 1024;

  /** What an entry takes beside its texts and bytes, about. */
  private static final int ENTRY_BYTES = 200;

  /** Below this, compressing saves nothing that a network would notice. */
  private static final int LEAST_TO_COMPRESS = 1000;

  private final Cache<Key, Answer> answers =
      Caffeine.newBuilder()
          .maximumWeight(MOST_BYTES)
          .<Key, Answer>weigher((key, answer) -> key.weight() + answer.bytes().length)
          .build();

  private final Cache<Wording, Key> wordings =
      Caffeine.newBuilder()
          .maximumWeight(MOST_BYTES_OF_WORDINGS)
          .<Wording, Key>weigher((wording, key) -> wording.weight() + key.weight())
          .build();

  /**
   * A question in one way, however it was asked.
   *
   * @param question with all its defaults
   */
  record Key(int edition, String question, Format format, boolean gzipped) {
    int weight() {
      return ENTRY_BYTES + 2 * question.length();
    }

    private Key compressed() {
      return new Key(edition, question, format, true);
    }
  }

  /**
   * A question as somebody asked it: the same question can be asked in many ways.
   *
   * @param accept the header, or an empty text
   * @param gzip whether the answer may be compressed
   */
  record Wording(int edition, String path, String query, String accept, boolean gzip) {
    int weight() {
      return ENTRY_BYTES + 2 * (path.length() + query.length() + accept.length());
    }
  }

  /** The answer to a question that was asked in the same words before, and is still kept. */
  Optional<Answer> asBefore(Wording wording) {
    return Optional.ofNullable(wordings.getIfPresent(wording)).map(answers::getIfPresent);
  }

  /** The answer to a question, worked out if it isn't kept. */
  Answer answer(Wording wording, Key key, Supplier<Answer> maker) {
    Answer plain = answers.get(key, missing -> maker.get());
    boolean compress = wording.gzip() && plain.bytes().length >= LEAST_TO_COMPRESS;
    Key sent = compress ? key.compressed() : key;
    wordings.put(wording, sent);
    return compress ? answers.get(sent, missing -> plain.compressed()) : plain;
  }
}
