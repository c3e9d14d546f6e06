package org.hedgerow.lexicon;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.Set;

/**
 * What a list asks of the tags of its words.
 *
 * @param picturable how well a word can be shown in a picture at least, 0 to 3
 * @param pictured whether a word must have a picture
 * @param partOfSpeech what a word must be able to be
 * @param meanings of which a word must have one; empty if it doesn't matter
 * @param starter whether a word must belong to the starter set
 */
public record TagFilter(
    int picturable,
    boolean pictured,
    Optional<PartOfSpeech> partOfSpeech,
    Set<Meaning> meanings,
    boolean starter) {

  /** The best that a word can be shown: an object to hold or to photograph. */
  public static final int MAX_PICTURABLE = 3;

  /** A child would name the picture with the word, once told. */
  public static final int DRAWABLE = 2;

  /** Asks nothing. */
  public static final TagFilter NONE = new TagFilter(0, false, Optional.empty(), Set.of(), false);

  public TagFilter {
    if (picturable < 0 || picturable > MAX_PICTURABLE) {
      throw new IllegalArgumentException("picturable is 0 to 3, not " + picturable);
    }
    requireNonNull(partOfSpeech);
    meanings = Set.copyOf(meanings);
  }

  public TagFilter withPicturable(int least) {
    return new TagFilter(least, pictured, partOfSpeech, meanings, starter);
  }

  public TagFilter withPicture() {
    return new TagFilter(picturable, true, partOfSpeech, meanings, starter);
  }

  public TagFilter inStarterSet() {
    return new TagFilter(picturable, pictured, partOfSpeech, meanings, true);
  }
}
