package org.hedgerow.lexicon;

import java.util.List;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;

/**
 * What an edition changed beside words.
 *
 * @param sequences the computed one is not among them: it never changes
 * @param sentences each named by its text
 * @param pictures those that came; pictures stay for good
 */
public record MaterialChanges(
    List<Changed<RuleSet>> rules,
    List<Changed<Sequence>> sequences,
    List<Changed<SightWords>> sightWords,
    List<Changed<Sentence>> sentences,
    List<Picture> pictures) {

  /** What the first edition changed: it is where all begins. */
  public static final MaterialChanges NONE =
      new MaterialChanges(List.of(), List.of(), List.of(), List.of(), List.of());

  /** What an edition changed in the one before it. */
  public static MaterialChanges of(Editions editions, Lexicon edition) {
    return editions.at(edition.edition() - 1).map(before -> between(before, edition)).orElse(NONE);
  }

  private static MaterialChanges between(Lexicon before, Lexicon after) {
    return new MaterialChanges(
        Changed.between(before.plans().rules().all(), after.plans().rules().all(), RuleSet::name),
        Changed.between(
            before.plans().curriculum().sequences(),
            after.plans().curriculum().sequences(),
            Sequence::name),
        Changed.between(
            before.plans().sightWords().all(), after.plans().sightWords().all(), SightWords::name),
        Changed.between(before.sentences().all(), after.sentences().all(), Sentence::text),
        after.pictures().without(before.pictures()));
  }

  public boolean isEmpty() {
    return rules.isEmpty()
        && sequences.isEmpty()
        && sightWords.isEmpty()
        && sentences.isEmpty()
        && pictures.isEmpty();
  }
}
