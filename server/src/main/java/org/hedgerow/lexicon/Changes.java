package org.hedgerow.lexicon;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What later editions changed in the first.
 *
 * @param words as they stand now: new ones, and others in place of the first edition's; each
 *     spelling once
 * @param withdrawn spellings of words that stood in an earlier edition and don't stand now
 */
public record Changes(List<Word> words, Set<String> withdrawn) {

  public static final Changes NONE = new Changes(List.of(), Set.of());

  public Changes {
    words = List.copyOf(words);
    withdrawn = Set.copyOf(withdrawn);
  }

  /** These changes, and then others. */
  public Changes and(Changes later) {
    Map<String, Word> standing = new LinkedHashMap<>();
    words.forEach(word -> standing.put(word.spelling(), word));
    later.words.forEach(word -> standing.put(word.spelling(), word));
    later.withdrawn.forEach(standing::remove);
    return new Changes(List.copyOf(standing.values()), gone(later, standing.keySet()));
  }

  private Set<String> gone(Changes later, Collection<String> standing) {
    Set<String> gone = new HashSet<>(withdrawn);
    gone.addAll(later.withdrawn);
    gone.removeAll(standing);
    return gone;
  }
}
