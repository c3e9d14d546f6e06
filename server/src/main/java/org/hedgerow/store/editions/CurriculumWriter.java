package org.hedgerow.store.editions;

import java.util.List;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.lexicon.Plans;
import org.hedgerow.phonics.Catalogue;
import org.jdbi.v3.core.Handle;

/**
 * Changes sets of rules, sequences and sight words within a transaction that {@link
 * EditionWriter#publish publishes} an edition. What wouldn't fit together is refused, and the
 * transaction has to end.
 */
public final class CurriculumWriter {
  private static final String RULES = "rule_sets";
  private static final String SEQUENCES = "sequences";
  private static final String SIGHT_WORDS = "sight_words";

  private final Handle handle;
  private final Catalogue catalogue;

  /**
   * @param catalogue of any edition: all have the same
   */
  public CurriculumWriter(Handle handle, Catalogue catalogue) {
    this.handle = handle;
    this.catalogue = catalogue;
  }

  /** What the first edition offers. */
  void writeFirst(Curriculum curriculum) {
    curriculum.rules().all().forEach(set -> write(set, FirstEdition.FIRST));
    curriculum.sequences().forEach(sequence -> write(sequence, FirstEdition.FIRST));
    writeFirst(curriculum.sightWords());
  }

  /** The sight words that the first edition offers. */
  void writeFirst(SightWordSets sets) {
    sets.all().forEach(set -> replace(set, FirstEdition.FIRST));
  }

  /** As it stands, changes of this transaction among them. */
  public Curriculum current() {
    return new CurriculumReader(handle, catalogue).at(Integer.MAX_VALUE);
  }

  /**
   * Lets a set of rules stand so from an edition on, whether there was one of its name or not.
   *
   * @param edition of this transaction
   * @throws IllegalArgumentException if it is the usual one with other rules
   */
  public void replace(RuleSet set, int edition) {
    write(set, edition);
    requireSound();
  }

  private void write(RuleSet set, int edition) {
    int place = end(RULES, set.name(), edition);
    write(
        RULES + " (name, place, title, note, since_edition, switches)",
        List.of(set.name(), place, set.title(), set.note(), edition),
        CurriculumJson.switches(set.rules()));
  }

  /**
   * Lets a sequence stand so from an edition on, whether there was one of its name or not.
   *
   * @param edition of this transaction
   * @throws IllegalArgumentException if its name is that of the computed one
   */
  public void replace(Sequence sequence, int edition) {
    if (sequence.name().equals(Plans.COMPUTED)) {
      throw new IllegalArgumentException("the sequence %s is computed".formatted(Plans.COMPUTED));
    }
    write(sequence, edition);
  }

  private void write(Sequence sequence, int edition) {
    int place = end(SEQUENCES, sequence.name(), edition);
    write(
        SEQUENCES + " (name, place, title, note, since_edition, steps)",
        List.of(sequence.name(), place, sequence.title(), sequence.note(), edition),
        CurriculumJson.steps(sequence.steps()));
  }

  /**
   * Lets a set of sight words stand so from an edition on, whether there was one of its name or
   * not.
   *
   * @param edition of this transaction
   */
  public void replace(SightWords set, int edition) {
    int place = end(SIGHT_WORDS, set.name(), edition);
    write(
        SIGHT_WORDS + " (name, place, title, note, since_edition, words)",
        List.of(set.name(), place, set.title(), set.note(), edition),
        CurriculumJson.words(set.words()));
  }

  private void write(String target, List<Object> values, String json) {
    handle
        .createUpdate("insert into %s values (<values>, :json::jsonb)".formatted(target))
        .bindList("values", values)
        .bind("json", json)
        .execute();
  }

  /**
   * @throws IllegalArgumentException if it is the usual one
   */
  public void withdrawRules(String name, int edition) {
    end(RULES, name, edition);
    requireSound();
  }

  public void withdrawSequence(String name, int edition) {
    end(SEQUENCES, name, edition);
  }

  public void withdrawSightWords(String name, int edition) {
    end(SIGHT_WORDS, name, edition);
  }

  private void requireSound() {
    current();
  }

  /** The place that its next version has, which is the last for a name that is new. */
  private int end(String table, String name, int edition) {
    int place = place(table, name);
    update("delete from %s where name = :name and since_edition = :edition", table, name, edition);
    update(
        "update %s set until_edition = :edition where name = :name and until_edition is null",
        table, name, edition);
    return place;
  }

  private int place(String table, String name) {
    return handle
        .createQuery(
            """
            select coalesce(
              (select place from %1$s where name = :name and until_edition is null),
              (select max(place) + 1 from %1$s), 0)
            """
                .formatted(table))
        .bind("name", name)
        .mapTo(Integer.class)
        .one();
  }

  private void update(String statement, String table, String name, int edition) {
    handle
        .createUpdate(statement.formatted(table))
        .bind("name", name)
        .bind("edition", edition)
        .execute();
  }
}
