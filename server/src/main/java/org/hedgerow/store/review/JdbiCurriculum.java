package org.hedgerow.store.review;

import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.Account;
import org.hedgerow.operations.Actor;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.review.CurriculumStore;
import org.hedgerow.store.editions.CurriculumWriter;
import org.hedgerow.store.editions.EditionWriter;
import org.jdbi.v3.core.Handle;

/** Rules, sequences and sight words as somebody's transaction sees and changes them. */
record JdbiCurriculum(Handle handle, List<AccentCatalogue> accents) implements CurriculumStore {
  private CurriculumWriter writer() {
    return new CurriculumWriter(handle, accents.get(0).catalogue());
  }

  @Override
  public Curriculum current() {
    return writer().current();
  }

  @Override
  public int publish(Curriculum changed, String summary, Actor by, Instant at) {
    Curriculum before = current();
    int edition =
        new EditionWriter(handle, accents)
            .publish(
                summary,
                by.account().map(Account::id).map(OptionalInt::of).orElseGet(OptionalInt::empty),
                OptionalInt.empty(),
                at);
    publishRules(before, changed, edition);
    publishSequences(before, changed, edition);
    publishSightWords(before.sightWords(), changed.sightWords(), edition);
    return edition;
  }

  private void publishRules(Curriculum before, Curriculum after, int edition) {
    for (RuleSet set : after.rules().all()) {
      if (!before.rules().all().contains(set)) {
        writer().replace(set, edition);
      }
    }
    for (RuleSet set : before.rules().all()) {
      if (after.rules().named(set.name()).isEmpty()) {
        writer().withdrawRules(set.name(), edition);
      }
    }
  }

  private void publishSequences(Curriculum before, Curriculum after, int edition) {
    for (Sequence sequence : after.sequences()) {
      if (!before.sequences().contains(sequence)) {
        writer().replace(sequence, edition);
      }
    }
    for (Sequence sequence : before.sequences()) {
      if (after.sequence(sequence.name()).isEmpty()) {
        writer().withdrawSequence(sequence.name(), edition);
      }
    }
  }

  private void publishSightWords(SightWordSets before, SightWordSets after, int edition) {
    for (SightWords set : after.all()) {
      if (!before.all().contains(set)) {
        writer().replace(set, edition);
      }
    }
    for (SightWords set : before.all()) {
      if (after.named(set.name()).isEmpty()) {
        writer().withdrawSightWords(set.name(), edition);
      }
    }
  }
}
