package org.hedgerow.web.curriculum;

import java.util.List;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.StepFigures;
import org.hedgerow.lexicon.Word;

/** All sequences with what each step gives in an accent. */
record SequencesView(int edition, String accent, List<Named> sequences) {

  private static final int MAX_EXAMPLES = 12;
  private static final double THOUSANDTHS = 1000;

  record Named(String name, String title, String note, List<Step> steps) {}

  /**
   * @param taught how the step is written in queries
   * @param opens how many words it makes readable
   * @param examples the first of them
   */
  record Step(int step, String taught, List<Value> values, int opens, List<String> examples) {}

  /**
   * @param words how many words of the value can be read at the step
   * @param regularity how often its letters mean it, from 0 to 1
   */
  record Value(String phonogram, int value, String keyWord, int words, double regularity) {}

  static SequencesView of(Lexicon lexicon, String accent) {
    return new SequencesView(
        lexicon.edition(),
        accent,
        lexicon.plans().sequences(accent).stream()
            .map(each -> named(each, lexicon, accent))
            .toList());
  }

  private static Named named(Sequence sequence, Lexicon lexicon, String accent) {
    return new Named(
        sequence.name(),
        sequence.title(),
        sequence.note(),
        StepFigures.of(lexicon, accent, sequence).stream()
            .map(step -> step(sequence.name(), step))
            .toList());
  }

  private static Step step(String sequence, StepFigures step) {
    return new Step(
        step.number(),
        sequence + ":" + step.number(),
        step.values().stream().map(SequencesView::value).toList(),
        step.opened().size(),
        step.opened().stream().limit(MAX_EXAMPLES).map(Word::spelling).toList());
  }

  private static Value value(StepFigures.ValueFigures figures) {
    return new Value(
        figures.value().grapheme().text(),
        figures.value().value().orElseThrow(),
        figures.value().keyWord(),
        figures.yield(),
        Math.round(figures.regularity() * THOUSANDTHS) / THOUSANDTHS);
  }
}
