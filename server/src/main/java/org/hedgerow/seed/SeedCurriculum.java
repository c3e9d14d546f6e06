package org.hedgerow.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hedgerow.curriculum.Curriculum;
import org.hedgerow.curriculum.RuleSet;
import org.hedgerow.curriculum.RuleSets;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.curriculum.SightWordSets;
import org.hedgerow.curriculum.SightWords;
import org.hedgerow.phonics.Catalogue;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Switch;
import org.hedgerow.seedlexicon.RuleSetRow;
import org.hedgerow.seedlexicon.SeedLexicon;
import org.hedgerow.seedlexicon.SequenceRow;
import org.hedgerow.seedlexicon.SightWordRow;
import org.hedgerow.seedlexicon.SightWordSetRow;
import org.hedgerow.seedlexicon.StepRow;

/**
 * The named reading rules, the sequences and the sight words of the seed lexicon. A row that makes
 * no sense fails with an {@link IllegalArgumentException} that names it.
 */
public final class SeedCurriculum {

  private static final Pattern VALUE = Pattern.compile("([a-z]+(?:-e)?)([0-9]*)");

  private SeedCurriculum() {}

  public static Curriculum read(SeedLexicon seed, Catalogue catalogue) {
    List<StepRow> steps = seed.sequenceSteps();
    return new Curriculum(
        new RuleSets(seed.ruleSets().stream().map(SeedCurriculum::ruleSet).toList()),
        seed.sequences().stream().map(row -> sequence(row, steps, catalogue)).toList(),
        sightWords(seed));
  }

  /** The sets of words that children learn whole. */
  public static SightWordSets sightWords(SeedLexicon seed) {
    List<SightWordRow> words = seed.sightWords();
    List<SightWordSetRow> sets = seed.sightWordSets();
    for (SightWordRow word : words) {
      if (sets.stream().noneMatch(set -> set.name().equals(word.set()))) {
        throw new IllegalArgumentException("no set of sight words " + word.set());
      }
    }
    return new SightWordSets(sets.stream().map(set -> sightWords(set, words)).toList());
  }

  private static SightWords sightWords(SightWordSetRow set, List<SightWordRow> all) {
    List<String> words =
        all.stream().filter(word -> word.set().equals(set.name())).map(SightWordRow::word).toList();
    return new SightWords(set.name(), set.title(), words, set.note());
  }

  private static RuleSet ruleSet(RuleSetRow row) {
    ReadingRules rules = ReadingRules.DEFAULT;
    for (Map.Entry<String, Boolean> each : row.switches().entrySet()) {
      Switch named =
          Switch.labelled(each.getKey())
              .orElseThrow(() -> new IllegalArgumentException("no rule " + each.getKey()));
      rules = rules.with(named, each.getValue());
    }
    return new RuleSet(row.name(), row.title(), rules, row.note());
  }

  private static Sequence sequence(SequenceRow row, List<StepRow> all, Catalogue catalogue) {
    List<List<Correspondence>> steps = new ArrayList<>();
    for (StepRow step : all) {
      if (step.sequence().equals(row.name())) {
        steps.add(values(step, catalogue));
        requireNumber(step, steps.size());
      }
    }
    return new Sequence(row.name(), row.title(), row.note(), steps);
  }

  private static void requireNumber(StepRow step, int number) {
    if (step.step() != number) {
      throw new IllegalArgumentException(
          "the sequence %s has step %d where %d is due"
              .formatted(step.sequence(), step.step(), number));
    }
  }

  private static List<Correspondence> values(StepRow step, Catalogue catalogue) {
    return step.values().stream().flatMap(each -> values(each, step, catalogue).stream()).toList();
  }

  private static List<Correspondence> values(String text, StepRow step, Catalogue catalogue) {
    Matcher parts = VALUE.matcher(text);
    List<Correspondence> values =
        parts.matches() ? catalogue.values(parts.group(1)) : List.<Correspondence>of();
    List<Correspondence> wanted =
        values.stream().filter(value -> isNumbered(value, parts.group(2))).toList();
    if (wanted.isEmpty()) {
      throw new IllegalArgumentException(
          "step %d of the sequence %s has %s, which is no value of a phonogram"
              .formatted(step.step(), step.sequence(), text));
    }
    return wanted;
  }

  private static boolean isNumbered(Correspondence value, String number) {
    return number.isEmpty() || String.valueOf(value.value().orElseThrow()).equals(number);
  }
}
