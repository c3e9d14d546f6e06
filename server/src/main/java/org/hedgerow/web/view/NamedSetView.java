package org.hedgerow.web.view;

import java.util.List;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.hedgerow.review.curriculum.SetDraft;
import org.hedgerow.review.curriculum.SightWordsDraft;
import org.jspecify.annotations.Nullable;

/**
 * A named set of a centre, as it is sent to be saved and shown where it changed.
 *
 * @param <D> the draft that it describes
 */
public sealed interface NamedSetView<D extends SetDraft<?>> {

  /**
   * @param name from the address
   */
  D toDraft(String name);

  /**
   * A set of reading rules.
   *
   * @param switches labels of those that are on
   */
  record Rules(@Nullable String title, @Nullable String note, @Nullable List<String> switches)
      implements NamedSetView<RulesDraft> {

    public static Rules of(RulesDraft draft) {
      return new Rules(draft.title(), draft.note(), draft.switches().stream().sorted().toList());
    }

    public static Rules of(RuleSet set) {
      return of(RulesDraft.of(set));
    }

    @Override
    public RulesDraft toDraft(String name) {
      return new RulesDraft(name, title, note, switches);
    }
  }

  /**
   * A sequence.
   *
   * @param steps in each the values that are taught together, as in {@code oo 2}
   */
  record SequenceSteps(
      @Nullable String title, @Nullable String note, @Nullable List<List<String>> steps)
      implements NamedSetView<SequenceDraft> {

    public static SequenceSteps of(SequenceDraft draft) {
      return new SequenceSteps(draft.title(), draft.note(), draft.steps());
    }

    public static SequenceSteps of(Sequence sequence) {
      return of(SequenceDraft.of(sequence));
    }

    @Override
    public SequenceDraft toDraft(String name) {
      return new SequenceDraft(name, title, note, steps);
    }
  }

  /** A set of sight words. */
  record Words(@Nullable String title, @Nullable String note, @Nullable List<String> words)
      implements NamedSetView<SightWordsDraft> {

    public static Words of(SightWordsDraft draft) {
      return new Words(draft.title(), draft.note(), draft.words());
    }

    public static Words of(SightWords set) {
      return of(SightWordsDraft.of(set));
    }

    @Override
    public SightWordsDraft toDraft(String name) {
      return new SightWordsDraft(name, title, note, words);
    }
  }
}
