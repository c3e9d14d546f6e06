package org.hedgerow.operations;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Part of a list in the order of a key. The next part begins after the key of the last item, so
 * that nothing shifts when the list grows.
 *
 * @param next the key of the last item; empty at the end of the list
 */
public record KeysetPage<T>(List<T> items, Optional<String> next) {
  public KeysetPage {
    items = List.copyOf(items);
  }

  /**
   * The first items of what was found.
   *
   * @param found more than the limit if the list goes on; one more is enough
   * @param limit at least 1
   * @param key of an item; its text is shown to whoever goes on
   */
  public static <T> KeysetPage<T> of(List<T> found, int limit, Function<T, ?> key) {
    return found.size() <= limit
        ? new KeysetPage<>(found, Optional.empty())
        : new KeysetPage<>(
            found.subList(0, limit), Optional.of(key.apply(found.get(limit - 1)).toString()));
  }

  public static <T> KeysetPage<T> empty() {
    return new KeysetPage<>(List.of(), Optional.empty());
  }

  public <R> KeysetPage<R> map(Function<T, R> shown) {
    return new KeysetPage<>(items.stream().map(shown).toList(), next);
  }
}
