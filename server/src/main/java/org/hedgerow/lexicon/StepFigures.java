package org.hedgerow.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.phonics.Correspondence;
import org.hedgerow.reading.ReadingRules;
import org.hedgerow.reading.Standard;

/**
 * What a step of a sequence gives in an accent.
 *
 * @param number from 1
 * @param opened the words that it makes readable, in the order of lists
 */
public record StepFigures(int number, List<ValueFigures> values, List<Word> opened) {

  public StepFigures {
    values = List.copyOf(values);
    opened = List.copyOf(opened);
  }

  /**
   * @param yield how many words of its default list can be read at the step
   * @param regularity how often its letters mean it, from 0 to 1
   */
  public record ValueFigures(Correspondence value, int yield, double regularity) {}

  /** The figures of every step. */
  public static List<StepFigures> of(Lexicon lexicon, String accent, Sequence sequence) {
    Regularity regularity = new Regularity(lexicon, accent);
    List<StepFigures> figures = new ArrayList<>();
    for (int step = 1; step <= sequence.steps().size(); step++) {
      figures.add(step(lexicon, accent, sequence, step, regularity));
    }
    return figures;
  }

  private static StepFigures step(
      Lexicon lexicon, String accent, Sequence sequence, int step, Regularity regularity) {
    Set<Correspondence> taught = sequence.taughtBy(step);
    List<ValueFigures> values = new ArrayList<>();
    Set<Word> opened = new LinkedHashSet<>();
    for (Correspondence value : sequence.steps().get(step - 1)) {
      Standard standard = new Standard(ReadingRules.DEFAULT, Set.of(value), taught);
      List<Word> words = lexicon.find(WordQuery.of(accent, standard));
      values.add(new ValueFigures(value, words.size(), regularity.of(value)));
      opened.addAll(words);
    }
    return new StepFigures(step, values, opened.stream().toList());
  }
}
