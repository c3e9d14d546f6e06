package org.hedgerow.lexicon;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The inflected forms of words. Immutable. */
public final class Inflections {

  private record Key(String base, String kind) {}

  private final Map<Key, String> forms = new HashMap<>();

  Inflections(Collection<Word> words) {
    words.forEach(
        word ->
            tags(word)
                .forEach(tag -> forms.merge(key(tag), word.spelling(), Inflections::commoner)));
  }

  private static Stream<Tag> tags(Word word) {
    return Stream.of(word.tag(Tag.BASE), word.tag(Tag.INFLECTED)).flatMap(Optional::stream);
  }

  private static Key key(Tag tag) {
    return new Key(tag.value(), tag.reason());
  }

  /** Words come with the commonest first. */
  private static String commoner(String first, String second) {
    return first;
  }

  /**
   * A form of a word.
   *
   * @param kind as in {@link Tag#reason}: <em>plural, past…</em>
   */
  public Optional<String> form(String base, String kind) {
    return Optional.ofNullable(forms.get(new Key(base, kind)));
  }

  /** What a word is a form of, and which form, if it is one. */
  public static Optional<Tag> formOf(Word word) {
    return tags(word).findFirst();
  }
}
