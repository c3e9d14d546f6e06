package org.hedgerow.web.curriculum;

import java.util.List;
import org.hedgerow.curriculum.Sequence;
import org.hedgerow.lexicon.StepFigures;
import org.hedgerow.lexicon.Word;
import org.hedgerow.web.page.Choice;
import org.hedgerow.web.page.ChosenAccents;
import org.hedgerow.web.page.ListAddress;
import org.hedgerow.web.page.ShownEdition;

/**
 * The page of the sequences, one of them shown.
 *
 * @param name as in addresses
 * @param sequences those to choose from
 * @param accents those to choose from
 */
record SequencePage(
    String name,
    String title,
    String note,
    List<Choice> sequences,
    List<Choice> accents,
    List<Step> steps,
    ShownEdition edition) {

  private static final int MAX_EXAMPLES = 8;
  private static final int HUNDRED = 100;

  /**
   * @param opens how many words it makes readable
   * @param examples the first of them, with commas between
   */
  record Step(int number, List<Value> values, int opens, String examples) {}

  /**
   * @param keyWord the word that shows it
   * @param reliable how often its letters mean it, in per cent
   * @param address its list at this step
   */
  record Value(String letters, String keyWord, int words, int reliable, String address) {}

  static SequencePage of(
      List<Sequence> all,
      Sequence chosen,
      List<StepFigures> figures,
      ChosenAccents accents,
      ShownEdition edition) {
    return new SequencePage(
        chosen.name(),
        chosen.title(),
        chosen.note(),
        all.stream()
            .map(each -> new Choice(each.name(), each.title(), each.equals(chosen)))
            .toList(),
        accents.choices(),
        figures.stream()
            .map(step -> step(chosen.name(), step, accents.parameter(), edition))
            .toList(),
        edition);
  }

  private static Step step(
      String sequence, StepFigures figures, String accents, ShownEdition edition) {
    String taught = "&taught=%s:%d".formatted(sequence, figures.number());
    return new Step(
        figures.number(),
        figures.values().stream()
            .map(
                each ->
                    new Value(
                        each.value().grapheme().text(),
                        each.value().keyWord(),
                        each.yield(),
                        (int) Math.round(each.regularity() * HUNDRED),
                        edition.in(ListAddress.of(each.value(), accents) + taught)))
            .toList(),
        figures.opened().size(),
        String.join(
            ", ", figures.opened().stream().limit(MAX_EXAMPLES).map(Word::spelling).toList()));
  }
}
