package org.hedgerow.review;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hedgerow.accounts.Actor;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.accounts.NothingThereException;
import org.hedgerow.accounts.RefusedException;
import org.hedgerow.reading.SightWords;
import org.hedgerow.reading.Teaching;

/** Takes a named set of sight words out of the choice, in a new edition; older ones keep it. */
public final class WithdrawSightWords {
  private final TeachingDesk desk;

  WithdrawSightWords(Workroom room) {
    this.desk = new TeachingDesk(room);
  }

  /**
   * @return the number of the edition
   * @throws NothingThereException if there is none of this name
   * @throws RefusedException if it is the one that counts where nothing is chosen
   */
  public int execute(Actor actor, String name, Optional<String> seen) {
    return desk.change(actor, seen, present -> edit(present, name));
  }

  private static TeachingDesk.Edited edit(Teaching present, String name) {
    SightWords set =
        present
            .sightWords()
            .named(name)
            .orElseThrow(() -> new NothingThereException("The set of sight words"));
    requireNotUsual(present, set);
    return new TeachingDesk.Edited(
        present.withoutSightWords(name),
        SightWordsDraft.mark(Optional.of(set)),
        "sight-words.withdrawn",
        "sight words " + name,
        "Sight words withdrawn: %s.".formatted(set.title()),
        SaveSightWords.record(set),
        Map.of());
  }

  private static void requireNotUsual(Teaching present, SightWords set) {
    if (present.sightWords().usual().filter(set::equals).isPresent()) {
      throw new RefusedException(
          List.of(
              new FieldFault(
                  "name",
                  "These words are used by default and can't be withdrawn. Change them instead.")));
    }
  }
}
