package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.hedgerow.curriculum.Curriculum;

/**
 * What later editions changed in the first.
 *
 * @param words as they stand now: new ones, and others in place of the first edition's; each
 *     spelling once
 * @param withdrawn spellings of words that stood in an earlier edition and don't stand now
 * @param curriculum what centres choose from now, if that was changed
 * @param pictures that came, beside those of the first edition
 * @param sentences all there are now, if any came or went: the first edition has none
 */
public record Changes(
    List<Word> words,
    Set<String> withdrawn,
    Optional<Curriculum> curriculum,
    List<Picture> pictures,
    Optional<Sentences> sentences) {

  public static final Changes NONE = Changes.of(List.of(), Set.of());

  public Changes {
    words = List.copyOf(words);
    withdrawn = Set.copyOf(withdrawn);
    requireNonNull(curriculum);
    pictures = List.copyOf(pictures);
    requireNonNull(sentences);
  }

  /** Changes of words alone. */
  public static Changes of(List<Word> words, Set<String> withdrawn) {
    return new Changes(words, withdrawn, Optional.empty(), List.of(), Optional.empty());
  }

  /** These changes, and then others. */
  public Changes and(Changes later) {
    Map<String, Word> standing = new LinkedHashMap<>();
    words.forEach(word -> standing.put(word.spelling(), word));
    later.words.forEach(word -> standing.put(word.spelling(), word));
    later.withdrawn.forEach(standing::remove);
    return new Changes(
        List.copyOf(standing.values()),
        gone(later, standing.keySet()),
        later.curriculum.or(() -> curriculum),
        Stream.concat(pictures.stream(), later.pictures.stream()).toList(),
        later.sentences.or(() -> sentences));
  }

  private Set<String> gone(Changes later, Collection<String> standing) {
    Set<String> gone = new HashSet<>(withdrawn);
    gone.addAll(later.withdrawn);
    gone.removeAll(standing);
    return gone;
  }
}
