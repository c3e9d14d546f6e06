package org.hedgerow.sentences;

import java.util.List;
import java.util.Set;
import org.hedgerow.reading.Standard;
import org.hedgerow.reading.Switch;

/**
 * What a sentence is measured by.
 *
 * @param standard the reading rules, the phonogram value, and what was taught; inflected forms are
 *     always allowed
 * @param accents tags of the accents in which it must be readable; at least one
 * @param sightWords words in lower case that were taught whole
 * @param minimumTargets how often the phonogram must come up
 * @param maximumWords how many words are not too many
 */
public record SentenceStandard(
    Standard standard,
    List<String> accents,
    Set<String> sightWords,
    int minimumTargets,
    int maximumWords) {

  /** How often the phonogram comes up in a sentence strip; common practice, no source. */
  public static final int DEFAULT_TARGETS = 3;

  /** How long a sentence strip is at most; common practice, no source. */
  public static final int DEFAULT_WORDS = 9;

  public SentenceStandard {
    standard =
        new Standard(
            standard.rules().with(Switch.INFLECTED_FORMS, true),
            standard.targets(),
            standard.taught());
    accents = List.copyOf(accents);
    sightWords = Set.copyOf(sightWords);
    if (accents.isEmpty()) {
      throw new IllegalArgumentException("a sentence is read in some accent");
    }
  }

  /** The same, with no phonogram wanted. */
  Standard withoutTarget() {
    return new Standard(standard.rules(), Set.of(), standard.taught());
  }

  /** The same, with nothing taught. */
  Standard withoutTaught() {
    return new Standard(standard.rules(), Set.of(), Set.of());
  }
}
