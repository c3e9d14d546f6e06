package org.hedgerow.curriculum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What centres choose from: reading rules, orders in which phonograms are taught, and words that
 * are learnt whole.
 */
public record Curriculum(RuleSets rules, List<Sequence> sequences, SightWordSets sightWords) {

  /** Where nobody has said anything. */
  public static final Curriculum NONE =
      new Curriculum(RuleSets.DEFAULT_ONLY, List.of(), SightWordSets.NONE);

  /** The sequence of this name, if there is one. */
  public Optional<Sequence> sequence(String name) {
    return sequences.stream().filter(each -> each.name().equals(name)).findFirst();
  }

  /** The same with a set of rules: in the place of the one of its name, or last. */
  public Curriculum with(RuleSet set) {
    return new Curriculum(
        new RuleSets(placed(rules.all(), set, each -> each.name().equals(set.name()))),
        sequences,
        sightWords);
  }

  /** The same without the set of rules of this name. */
  public Curriculum withoutRules(String name) {
    return new Curriculum(
        new RuleSets(rules.all().stream().filter(each -> !each.name().equals(name)).toList()),
        sequences,
        sightWords);
  }

  /** The same with a sequence: in the place of the one of its name, or last. */
  public Curriculum with(Sequence sequence) {
    return new Curriculum(
        rules,
        placed(sequences, sequence, each -> each.name().equals(sequence.name())),
        sightWords);
  }

  /** The same without the sequence of this name. */
  public Curriculum withoutSequence(String name) {
    return new Curriculum(
        rules, sequences.stream().filter(each -> !each.name().equals(name)).toList(), sightWords);
  }

  /** The same with a set of sight words: in the place of the one of its name, or last. */
  public Curriculum with(SightWords set) {
    return new Curriculum(
        rules,
        sequences,
        new SightWordSets(placed(sightWords.all(), set, each -> each.name().equals(set.name()))));
  }

  /** The same without the set of sight words of this name. */
  public Curriculum withoutSightWords(String name) {
    return new Curriculum(
        rules,
        sequences,
        new SightWordSets(
            sightWords.all().stream().filter(each -> !each.name().equals(name)).toList()));
  }

  private static <T> List<T> placed(List<T> all, T one, Predicate<T> place) {
    List<T> placed = new ArrayList<>(all);
    int index = 0;
    while (index < placed.size() && !place.test(placed.get(index))) {
      index++;
    }
    if (index < placed.size()) {
      placed.set(index, one);
    } else {
      placed.add(one);
    }
    return placed;
  }

  public Curriculum {
    sequences = List.copyOf(sequences);
    if (sequences.stream().map(Sequence::name).distinct().count() < sequences.size()) {
      throw new IllegalArgumentException("two sequences have one name");
    }
  }
}
