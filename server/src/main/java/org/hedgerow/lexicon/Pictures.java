package org.hedgerow.lexicon;

import static java.util.function.Function.identity;
import static java.util.stream.Collectors.toUnmodifiableMap;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The pictures that words may have, by their ids. Immutable. */
public final class Pictures {

  public static final Pictures NONE = new Pictures(List.of());

  private final Map<String, Picture> byId;

  /**
   * @param pictures each id once
   */
  public Pictures(List<Picture> pictures) {
    this.byId = pictures.stream().collect(toUnmodifiableMap(Picture::id, identity()));
  }

  /** With others beside. */
  Pictures and(List<Picture> more) {
    return more.isEmpty()
        ? this
        : new Pictures(Stream.concat(byId.values().stream(), more.stream()).toList());
  }

  public Optional<Picture> picture(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The picture of a word, if it has one. */
  public Optional<Picture> of(Word word) {
    return word.tag(Tag.PICTURE).map(Tag::value).flatMap(this::picture);
  }

  /** Those that others lack, by their ids. */
  List<Picture> without(Pictures others) {
    return byId.values().stream()
        .filter(each -> !others.byId.containsKey(each.id()))
        .sorted(Comparator.comparing(Picture::id))
        .toList();
  }

  public int count() {
    return byId.size();
  }
}
