package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.Actor;
import org.hedgerow.operations.RejectedException;
import org.hedgerow.review.ReviewContext;

/**
 * Makes or changes a named set of sight words, in a new edition. The one that counts where nothing
 * is chosen may be changed like any other: a centre's own words are to count.
 */
public final class SaveSightWords {
  private final ChangeCurriculum desk;

  SaveSightWords(ReviewContext context) {
    this.desk = new ChangeCurriculum(context);
  }

  /**
   * @param seen the {@link SightWordsDraft#mark} of what stood there; empty if it doesn't matter
   * @return the number of the edition
   * @throws RejectedException with all that is wrong
   * @throws org.hedgerow.operations.StaleUpdateException if it isn't so any more
   */
  public int execute(Actor actor, SightWordsDraft draft, Optional<String> seen) {
    RejectedException.throwIfAny(draft.errors());
    return desk.change(actor, seen, present -> edit(present, draft.set()));
  }

  private static ChangeCurriculum.Edited edit(Curriculum present, SightWords set) {
    Optional<SightWords> before = present.sightWords().named(set.name());
    return new ChangeCurriculum.Edited(
        present.with(set),
        SightWordsDraft.mark(before),
        "sight-words.saved",
        "sight words " + set.name(),
        "Sight words: %s.".formatted(set.title()),
        before.map(SaveSightWords::record).orElse(Map.of()),
        record(set));
  }

  static Map<String, Object> record(SightWords set) {
    return Map.of(
        "title", set.title(), "note", set.note(), "words", SightWordsDraft.of(set).wordsInText());
  }
}
