package org.hedgerow.web.view;

import java.util.List;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.review.curriculum.RulesDraft;
import org.hedgerow.review.curriculum.SequenceDraft;
import org.jspecify.annotations.Nullable;

/** The named sets of a centre, as they are sent to be saved and shown where they changed. */
public final class NamedSetView {
  private NamedSetView() {}

  /**
   * A set of reading rules.
   *
   * @param switches labels of those that are on
   */
  public record Rules(
      @Nullable String title, @Nullable String note, @Nullable List<String> switches) {

    public static Rules of(RuleSet set) {
      RulesDraft draft = RulesDraft.of(set);
      return new Rules(draft.title(), draft.note(), draft.switches());
    }
  }

  /**
   * A sequence.
   *
   * @param steps in each the values that are taught together, as in {@code oo 2}
   */
  public record SequenceSteps(
      @Nullable String title, @Nullable String note, @Nullable List<List<String>> steps) {

    public static SequenceSteps of(Sequence sequence) {
      SequenceDraft draft = SequenceDraft.of(sequence);
      return new SequenceSteps(draft.title(), draft.note(), draft.steps());
    }
  }

  /** A set of sight words. */
  public record Words(@Nullable String title, @Nullable String note, @Nullable List<String> words) {

    public static Words of(SightWords set) {
      return new Words(set.title(), set.note(), set.words());
    }
  }
}
