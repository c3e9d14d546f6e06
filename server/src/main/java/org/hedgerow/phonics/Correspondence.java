package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * A grapheme with the sound it spells: one row of the catalogue.
 *
 * @param id a small number, the row's place in the catalogue
 * @param grapheme the letters
 * @param value the number of the value among the grapheme's values, commonest first; empty where
 *     the correspondence is not taught on its own
 * @param kind what it is to a teacher
 * @param place where in a word it can stand
 * @param readsAsOne whether a reader takes the letters for one grapheme wherever they meet, so that
 *     they mislead where they say separate sounds
 * @param keyWord a word that shows the value
 * @param sounds by accent tag: the ways the accent says it, the usual one first; each way is a list
 *     of sounds, empty when silent
 * @param note what a teacher should know, or an empty text
 */
public record Correspondence(
    int id,
    Grapheme grapheme,
    OptionalInt value,
    CorrespondenceClass kind,
    SpellingContext place,
    boolean readsAsOne,
    String keyWord,
    Map<String, List<List<Sound>>> sounds,
    String note) {

  public Correspondence {
    requireNonNull(grapheme);
    requireNonNull(value);
    requireNonNull(kind);
    requireNonNull(place);
    requireNonNull(keyWord);
    requireNonNull(note);
    sounds = Map.copyOf(sounds);
  }

  /** The ways an accent says it, the usual one first; empty if the accent has it not. */
  public List<List<Sound>> soundsIn(Accent accent) {
    return sounds.getOrDefault(accent.tag(), List.of());
  }

  /** The usual sound in an accent, written without spaces; empty when silent. */
  public String soundIn(Accent accent) {
    return soundsIn(accent).stream().findFirst().map(Sound::joined).orElse("");
  }

  /** Whether this is a numbered value, which a list can be made for. */
  public boolean isTaught() {
    return value.isPresent();
  }

  /** The grapheme with the number of its value: {@code oo 2}. */
  public String label() {
    return value.isPresent() ? grapheme + " " + value.getAsInt() : grapheme.text();
  }

  /** Rows of one catalogue are told apart by their id. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Correspondence that
        && id == that.id
        && grapheme.equals(that.grapheme)
        && value.equals(that.value);
  }

  @Override
  public int hashCode() {
    return id;
  }

  @Override
  public String toString() {
    return label();
  }
}
