package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

/**
 * One way of saying a word in an accent, with its letters aligned to its sounds.
 *
 * @param accent the accent's tag
 * @param sounds the sounds in order
 * @param stressed the same in ARPAbet with stress, where the source gives it, else an empty text
 * @param source where the pronunciation comes from, such as {@code cmudict}
 * @param aside whether checks leave it aside: a weak form beside a strong one (<em>for</em> said
 *     /fɚ/), or a variant that a person has set aside
 * @param alignment empty if the catalogue cannot explain the spelling
 * @param obstacle why it cannot, else an empty text
 */
public record Pronunciation(
    String accent,
    List<Sound> sounds,
    String stressed,
    String source,
    boolean aside,
    Optional<Alignment> alignment,
    String obstacle) {

  public Pronunciation {
    requireNonNull(accent);
    sounds = List.copyOf(sounds);
    requireNonNull(stressed);
    requireNonNull(source);
    requireNonNull(alignment);
    requireNonNull(obstacle);
  }

  /** A pronunciation aligned by the aligner of its accent. */
  public static Pronunciation aligned(
      Aligner aligner,
      String spelling,
      List<Sound> sounds,
      String stressed,
      String source,
      boolean aside) {
    Optional<Alignment> alignment = aligner.align(spelling, sounds);
    String obstacle = alignment.isPresent() ? "" : aligner.obstacle(spelling, sounds);
    return new Pronunciation(
        aligner.accent().tag(), sounds, stressed, source, aside, alignment, obstacle);
  }

  /** The same with its letters aligned otherwise. */
  public Pronunciation aligned(Alignment other) {
    return new Pronunciation(accent, sounds, stressed, source, aside, Optional.of(other), "");
  }

  /** How many syllables it has: one for each vowel sound. */
  public int syllables() {
    int syllables = 0;
    for (Sound sound : sounds) {
      if (sound.vowel()) {
        syllables++;
      }
    }
    return syllables;
  }
}
