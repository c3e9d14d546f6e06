package org.hedgerow.phonics;

import static java.util.Objects.requireNonNull;

import java.util.List;

/**
 * One piece of an aligned word: letter positions with the correspondence they stand for.
 *
 * @param letters positions from 0, ascending; not contiguous for a split grapheme
 */
public record Span(List<Integer> letters, Realisation realisation) {

  public Span {
    letters = List.copyOf(letters);
    requireNonNull(realisation);
  }

  public Correspondence correspondence() {
    return realisation.correspondence();
  }

  public Grapheme grapheme() {
    return realisation.grapheme();
  }

  public List<Sound> sounds() {
    return realisation.sounds();
  }

  public int firstLetter() {
    return letters.get(0);
  }

  /** As in the gold alignments: {@code i-e:aɪ}, {@code x:k+s}, {@code b:∅}. */
  @Override
  public String toString() {
    String sounds =
        realisation.isSilent()
            ? "∅"
            : String.join("+", realisation.sounds().stream().map(Sound::ipa).toList());
    return grapheme() + ":" + sounds;
  }
}
