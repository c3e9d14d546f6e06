package org.hedgerow.web.http;

import com.github.benmanes.caffeine.cache.Cache;
import java.util.Optional;
import java.util.function.Supplier;
import org.hedgerow.caching.Caches;
import org.hedgerow.caching.ComputingCache;

/**
 * Keeps finished answers, as many as fit. What an edition answers never changes, but once two later
 * ones have taken its place it is hardly asked any more: its answers go then, before the collector
 * of garbage takes them for something that lasts, and others when the room is needed. Thread-safe;
 * a question that several ask at once is worked out once.
 */
public final class AnswerCache {

  /** In bytes; a list of 50 words has some 20,000. */
  private static final long MAX_BYTES = 32L * 1024 * 1024;

  private static final long MAX_BYTES_OF_WORDINGS = 4L * 1024 * 1024;

  /** Approximate overhead of an entry in bytes, without its texts and payload. */
  static final int ENTRY_BYTES = 200;

  /** Below this, compressing saves nothing that a network would notice. */
  private static final int MIN_TO_COMPRESS = 1000;

  private final ComputingCache<Key, Answer> answers =
      new ComputingCache<>(
          Caches.builder()
              .maximumWeight(MAX_BYTES)
              .<Key, Answer>weigher((key, answer) -> key.weight() + answer.bytes().length));

  private final Cache<Said, Key> wordings =
      Caches.builder()
          .maximumWeight(MAX_BYTES_OF_WORDINGS)
          .<Said, Key>weigher((said, key) -> said.wording().weight() + key.weight())
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

  private record Said(int edition, RawQuery wording) {}

  private int newest;
  private int before;

  /** Makes room for the answers of an edition that will soon be the newest. */
  public synchronized void prepare(int next) {
    int gone = before;
    answers.forget(key -> key.edition() == gone);
    wordings.asMap().keySet().removeIf(said -> said.edition() == gone);
    before = newest;
    newest = next;
  }

  /**
   * The answer of an edition to a question that was asked in the same words before, if it is still
   * kept.
   *
   * @param edition the newest one when it is asked
   */
  Optional<Answer> asBefore(int edition, RawQuery wording) {
    return Optional.ofNullable(wordings.getIfPresent(new Said(edition, wording)))
        .flatMap(answers::kept);
  }

  /**
   * The answer to a question, worked out if it isn't kept.
   *
   * @param edition the newest one when it is asked; the question may be about an older one
   */
  Answer answer(int edition, RawQuery wording, Key key, Supplier<Answer> maker) {
    Answer plain = answers.get(key, missing -> maker.get());
    boolean compress = wording.gzip() && plain.bytes().length >= MIN_TO_COMPRESS;
    Key sent = compress ? key.compressed() : key;
    wordings.put(new Said(edition, wording), sent);
    return compress ? answers.get(sent, missing -> plain.compressed()) : plain;
  }
}
