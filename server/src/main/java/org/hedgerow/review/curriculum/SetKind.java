package org.hedgerow.review.curriculum;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.NamedSet;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.operations.RejectedException;

/**
 * A kind of named set: where it stands in the curriculum, and what it is called.
 *
 * @param noun in the audit record, where its actions begin with it too
 * @param heading of what is said of a change
 * @param missing what isn't there when there is none of a name
 */
public record SetKind<T extends NamedSet, D extends SetDraft<T>>(
    String noun,
    String heading,
    String missing,
    BiFunction<Curriculum, String, Optional<T>> find,
    BiFunction<Curriculum, T, Curriculum> with,
    BiFunction<Curriculum, String, Curriculum> without,
    Function<T, D> draft,
    Protection protection) {

  /** Which sets must stay, and why. */
  @FunctionalInterface
  interface Protection {
    /**
     * @param name of the set that is saved or withdrawn
     * @return what speaks against it
     */
    Optional<String> refusal(Curriculum present, String name, boolean withdrawn);
  }

  public static final SetKind<RuleSet, RulesDraft> RULES =
      new SetKind<>(
          "rules",
          "Reading rules",
          "The set of rules",
          (curriculum, name) -> curriculum.rules().named(name),
          Curriculum::with,
          Curriculum::withoutRules,
          RulesDraft::of,
          SetKind::refuseDefaultRules);

  public static final SetKind<Sequence, SequenceDraft> SEQUENCES =
      new SetKind<>(
          "sequence",
          "Order of teaching",
          "The order of teaching",
          Curriculum::sequence,
          Curriculum::with,
          Curriculum::withoutSequence,
          SequenceDraft::of,
          (present, name, withdrawn) -> Optional.empty());

  public static final SetKind<SightWords, SightWordsDraft> SIGHT_WORDS =
      new SetKind<>(
          "sight words",
          "Sight words",
          "The set of sight words",
          (curriculum, name) -> curriculum.sightWords().named(name),
          Curriculum::with,
          Curriculum::withoutSightWords,
          SightWordsDraft::of,
          SetKind::refuseToWithdrawDefaultWords);

  private static Optional<String> refuseDefaultRules(
      Curriculum present, String name, boolean withdrawn) {
    RuleSets rules = present.rules();
    return rules.all().get(0).name().equals(name)
        ? Optional.of(
            "The usual rules are used by default and stay as they are. Make a set with another name.")
        : Optional.empty();
  }

  /** A centre changes the words that it uses by default like any others. */
  private static Optional<String> refuseToWithdrawDefaultWords(
      Curriculum present, String name, boolean withdrawn) {
    SightWordSets sets = present.sightWords();
    return withdrawn && sets.usual().filter(set -> set.name().equals(name)).isPresent()
        ? Optional.of(
            "These words are used by default and can't be withdrawn. Change them instead.")
        : Optional.empty();
  }

  /** See {@link SetDraft#mark}; empty for no set. */
  public String mark(Optional<T> set) {
    return set.map(draft).map(SetDraft::mark).orElse("");
  }

  String action(String verb) {
    return noun.replace(' ', '-') + "." + verb;
  }

  /** For the audit record. */
  Map<String, Object> record(T set) {
    Map<String, Object> record = new TreeMap<>(draft.apply(set).content());
    record.put("title", set.title());
    record.put("note", set.note());
    return record;
  }

  void requireAllowed(Curriculum present, String name, boolean withdrawn) {
    protection
        .refusal(present, name, withdrawn)
        .ifPresent(
            message -> {
              throw RejectedException.at("name", message);
            });
  }
}
