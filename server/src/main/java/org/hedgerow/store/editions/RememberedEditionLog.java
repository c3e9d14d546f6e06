package org.hedgerow.store.editions;

import com.github.benmanes.caffeine.cache.Cache;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.hedgerow.caching.Caches;
import org.hedgerow.lexicon.EditionLog;
import org.hedgerow.lexicon.PublishedEdition;
import org.hedgerow.lexicon.WordChange;
import org.hedgerow.operations.UnavailableException;

/**
 * The record of editions, from the database or, while that is away, from memory: all editions with
 * the words that each changed, and what exactly the latest ones changed and those that were asked
 * for lately. Thread-safe.
 */
final class RememberedEditionLog implements EditionLog {
  private static final int CHANGES_KEPT = 30;

  /** A table of a thousand words can be approved at once; that isn't kept. */
  private static final int MAX_KEPT = 100;

  private final JdbiEditionLog stored;
  private final IntSupplier newest;
  private final ConcurrentSkipListMap<Integer, PublishedEdition> editions =
      new ConcurrentSkipListMap<>();
  private final Map<String, List<Integer>> byWord = new ConcurrentHashMap<>();
  private final Cache<Integer, List<WordChange>> changes =
      Caches.builder().maximumSize(CHANGES_KEPT).build();

  /**
   * @param newest the number of the newest edition that is answered
   */
  RememberedEditionLog(JdbiEditionLog stored, IntSupplier newest) {
    this.stored = stored;
    this.newest = newest;
  }

  /**
   * Reads what isn't remembered yet; for one thread.
   *
   * @throws UnavailableException if the database doesn't answer
   */
  void catchUp() {
    int last = editions.isEmpty() ? 0 : editions.lastKey();
    if (last < newest.getAsInt()) {
      stored.changedWords(last).forEach(each -> remember(each.spelling(), each.edition()));
      List<PublishedEdition> later = stored.after(last);
      later.stream().limit(CHANGES_KEPT).forEach(this::readChanges);
      later.forEach(each -> editions.put(each.number(), each)); // last: they say it is complete
    }
  }

  private void remember(String spelling, int edition) {
    List<Integer> all = new ArrayList<>(byWord.getOrDefault(spelling, List.of()));
    if (!all.contains(edition)) {
      all.add(edition);
      byWord.put(spelling, List.copyOf(all));
    }
  }

  private void readChanges(PublishedEdition edition) {
    if (edition.words() <= MAX_KEPT) {
      changes.put(edition.number(), stored.changes(edition.number()));
    }
  }

  @Override
  public List<PublishedEdition> before(int number, int most) {
    return orElse(
        () -> stored.before(number, most),
        () -> editions.headMap(number).descendingMap().values().stream().limit(most).toList());
  }

  @Override
  public Optional<PublishedEdition> edition(int number) {
    return orElse(() -> stored.edition(number), () -> Optional.ofNullable(editions.get(number)));
  }

  @Override
  public List<PublishedEdition> ofWord(String spelling, int newestWanted) {
    return orElse(
        () -> stored.ofWord(spelling, newestWanted),
        () ->
            byWord.getOrDefault(spelling, List.of()).stream()
                .filter(number -> number <= newestWanted)
                .sorted((one, other) -> other - one)
                .flatMap(number -> Optional.ofNullable(editions.get(number)).stream())
                .toList());
  }

  /** Whether all editions are remembered that are answered. */
  boolean isComplete() {
    return !editions.isEmpty() && editions.lastKey() >= newest.getAsInt();
  }

  /** From the database, or from memory if all editions are remembered. */
  private <T> T orElse(Supplier<T> database, Supplier<T> memory) {
    try {
      return database.get();
    } catch (UnavailableException away) {
      if (!isComplete()) {
        throw away;
      }
      return memory.get();
    }
  }

  @Override
  public List<WordChange> changes(int number) {
    List<WordChange> known = changes.getIfPresent(number);
    return known != null ? known : read(number);
  }

  private List<WordChange> read(int number) {
    List<WordChange> read = stored.changes(number);
    if (read.size() <= MAX_KEPT) {
      changes.put(number, read);
    }
    return read;
  }
}
