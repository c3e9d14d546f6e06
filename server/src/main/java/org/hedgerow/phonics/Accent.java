package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An accent and its inventory of sounds.
 *
 * <p>Sounds are numbered by their place in the inventory, vowels first.
 */
public final class Accent {

  private final String tag;
  private final String name;
  private final Optional<String> parent;
  private final List<Sound> inventory;
  private final Map<String, Integer> indexes;
  private final String spelling;

  private Accent(
      String tag, String name, Optional<String> parent, List<Sound> inventory, String spelling) {
    this.tag = requireNonNull(tag);
    this.name = requireNonNull(name);
    this.parent = parent;
    this.spelling = requireNonNull(spelling);
    this.inventory = List.copyOf(inventory);
    this.indexes = new LinkedHashMap<>();
    for (Sound sound : inventory) {
      if (indexes.put(sound.ipa(), indexes.size()) != null) {
        throw new IllegalArgumentException(tag + " lists the sound /" + sound + "/ twice");
      }
    }
  }

  /**
   * An accent that stands alone.
   *
   * @param tag a BCP 47 tag, such as {@code en-US}
   * @param name what a teacher calls it
   * @param vowels IPA symbols, in the order in which they are shown
   * @param consonants IPA symbols, in the order in which they are shown
   */
  public static Accent of(String tag, String name, List<String> vowels, List<String> consonants) {
    List<Sound> inventory = new ArrayList<>();
    vowels.forEach(ipa -> inventory.add(new Sound(ipa, true)));
    consonants.forEach(ipa -> inventory.add(new Sound(ipa, false)));
    return new Accent(tag, name, Optional.empty(), inventory, "");
  }

  /** The same accent, saying as another does what it does not say itself. */
  public Accent under(String parentTag) {
    return new Accent(tag, name, Optional.of(parentTag), inventory, spelling);
  }

  /**
   * The same accent with the way in which its speakers spell.
   *
   * @param newSpelling {@code american} or {@code british}
   */
  public Accent spelt(String newSpelling) {
    return new Accent(tag, name, parent, inventory, newSpelling);
  }

  public String tag() {
    return tag;
  }

  public String name() {
    return name;
  }

  /** The tag of the accent that tells what this one doesn't; empty for one that stands alone. */
  public Optional<String> parent() {
    return parent;
  }

  /** How its speakers spell, {@code american} or {@code british}; empty if that isn't said. */
  public String spelling() {
    return spelling;
  }

  /** All sounds, vowels first. */
  public List<Sound> inventory() {
    return inventory;
  }

  /** The sound with this IPA symbol, if the accent has it. */
  public Optional<Sound> sound(String ipa) {
    return Optional.ofNullable(indexes.get(ipa)).map(inventory::get);
  }

  /** The number of a sound of this accent's inventory. */
  int indexOf(Sound sound) {
    Integer index = indexes.get(sound.ipa());
    if (index == null) {
      throw new IllegalArgumentException("/" + sound + "/ is no sound of " + tag);
    }
    return index;
  }

  @Override
  public String toString() {
    return tag;
  }
}
