package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;

/**
 * The named reading rules, sight words and sequences of an edition, ours among them. Thread-safe.
 */
public final class Plans {

  /** The name of the sequence that is computed from the words. */
  public static final String COMPUTED = DerivedSequence.NAME;

  private final Curriculum curriculum;
  private final DerivedSequences ours;

  Plans(Curriculum curriculum, DerivedSequences ours) {
    this.curriculum = curriculum;
    this.ours = ours;
  }

  Plans with(Curriculum other) {
    return new Plans(other, ours);
  }

  /** What people have written; the computed sequence isn't in it. */
  public Curriculum curriculum() {
    return curriculum;
  }

  public RuleSets rules() {
    return curriculum.rules();
  }

  public SightWordSets sightWords() {
    return curriculum.sightWords();
  }

  /** All sequences, the computed one last: it depends on the accent. */
  public List<Sequence> sequences(String accent) {
    List<Sequence> all = new ArrayList<>(curriculum.sequences());
    ours.in(accent).ifPresent(all::add);
    return List.copyOf(all);
  }

  public Optional<Sequence> sequence(String name, String accent) {
    return sequences(accent).stream().filter(each -> each.name().equals(name)).findFirst();
  }
}
