package org.hedgerow.web.words;

import com.github.benmanes.caffeine.cache.Cache;
import java.util.List;
import java.util.function.Supplier;
import org.hedgerow.caching.Caches;
import org.hedgerow.lexicon.Word;
import org.hedgerow.web.http.Json;

/**
 * The words of lists as JSON texts. Most editions change no word of a list: then they are as they
 * were written for the edition before. Thread-safe.
 */
final class WordJsonCache {
  private static final long MAX_BYTES = 4L * 1024 * 1024;
  private static final int BYTES_OF_A_CHARACTER = 2;

  private final Json json;
  private final Cache<String, Written> last =
      Caches.builder()
          .maximumWeight(MAX_BYTES)
          .<String, Written>weigher(
              (list, written) -> BYTES_OF_A_CHARACTER * (list.length() + written.json.length()))
          .build();

  private record Written(List<Word> words, String json) {}

  WordJsonCache(Json json) {
    this.json = json;
  }

  /**
   * @param list tells it from all others, in whatever edition, and how its words are shown
   * @param words of the list in an edition
   * @param views of these words, asked for only if they must be written
   */
  String json(String list, List<Word> words, Supplier<List<WordView>> views) {
    Written written = last.getIfPresent(list);
    if (written == null || !written.words.equals(words)) {
      written = new Written(words, json.text(views.get()));
      last.put(list, written);
    }
    return written.json;
  }
}
