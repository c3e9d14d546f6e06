package org.hedgerow.web.query;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.TagFilter;
import org.hedgerow.lexicon.Word;
import org.hedgerow.lexicon.WordQuery;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.Standard;

/**
 * How many words the default list of each phonogram value has. An edition never changes, so each is
 * counted once. Thread-safe.
 */
public final class ValueCounts {

  private static final int ACCENTS_AT_ONCE = 20;

  private final Cache<Key, Map<Correspondence, Count>> counts =
      Caffeine.newBuilder().maximumSize(ACCENTS_AT_ONCE).build();

  private record Key(int edition, String accent) {}

  /**
   * @param approved how many are approved by people
   * @param starter how many of the others belong to the starter set
   * @param picturable how many can be drawn or better
   * @param pictures how many have a picture
   */
  public record Count(int total, int approved, int starter, int picturable, int pictures) {

    public static final Count NONE = new Count(0, 0, 0, 0, 0);

    static Count of(List<Word> words) {
      return new Count(
          words.size(),
          count(words, Count::isApproved),
          count(words, word -> !isApproved(word) && word.isStarter()),
          count(words, word -> word.picturable().orElse(0) >= TagFilter.DRAWABLE),
          count(words, word -> word.is(Tag.PICTURE)));
    }

    private static boolean isApproved(Word word) {
      return word.status() == Status.APPROVED;
    }

    private static int count(List<Word> words, Predicate<Word> condition) {
      return (int) words.stream().filter(condition).count();
    }

    public int seeded() {
      return total - approved;
    }

    /** Those that nobody stands behind. */
    public int other() {
      return total - approved - starter;
    }
  }

  /** By every numbered value of the catalogue. */
  public Map<Correspondence, Count> in(Lexicon lexicon, String accent) {
    return counts.get(new Key(lexicon.edition(), accent), key -> count(lexicon, accent));
  }

  private static Map<Correspondence, Count> count(Lexicon lexicon, String accent) {
    Map<Correspondence, Count> counts = new HashMap<>();
    for (Correspondence each : lexicon.catalogue().correspondences()) {
      if (each.isTaught()) {
        counts.put(each, Count.of(lexicon.find(WordQuery.of(accent, Standard.of(each)))));
      }
    }
    return Map.copyOf(counts);
  }
}
