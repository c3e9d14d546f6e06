package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.hedgerow.lexicon.PartOfSpeech;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.review.WordLabels;

/**
 * What is known of a word beside its sounds, as fields of a form.
 *
 * @param suits whether it is for small children
 * @param unfit why it isn't
 */
record LabelsView(
    List<Option> commonness,
    List<Option> picturable,
    List<Option> partsOfSpeech,
    List<Option> suits,
    String unfit) {
  /** Kept where somebody says no and not yet why. */
  static final String NO_REASON = "no reason given";

  /**
   * @param word as the bank has it, whose labels stay where nothing is chosen
   */
  static LabelsView of(WordLabels labels, Optional<Word> word) {
    return new LabelsView(
        levels(
            labels.commonness(),
            5,
            1,
            ReviewWording::commonness,
            word.map(each -> ReviewWording.commonness(each.commonness()))),
        levels(
            labels.picturable(),
            3,
            0,
            ReviewWording::picturable,
            word.filter(each -> each.picturable().isPresent())
                .map(each -> ReviewWording.picturable(each.picturable().getAsInt()))),
        Arrays.stream(PartOfSpeech.values())
            .map(PartOfSpeech::label)
            .map(
                part ->
                    new Option(
                        part,
                        ReviewWording.partOfSpeech(part),
                        labels.partsOfSpeech().contains(part)))
            .toList(),
        suits(labels, word),
        labels.notForChildren().filter(reason -> !reason.equals(NO_REASON)).orElse(""));
  }

  private static List<Option> levels(
      Optional<Integer> chosen,
      int most,
      int least,
      IntFunction<String> words,
      Optional<String> present) {
    List<Option> options = new ArrayList<>();
    options.add(new Option("", unchosen(present), chosen.isEmpty()));
    for (int level = most; level >= least; level--) {
      options.add(
          new Option(String.valueOf(level), words.apply(level), chosen.equals(Optional.of(level))));
    }
    return options;
  }

  private static String unchosen(Optional<String> present) {
    return present.map(text -> "As it is now – " + text).orElse("I don’t know");
  }

  private static List<Option> suits(WordLabels labels, Optional<Word> word) {
    Optional<String> present =
        word.map(each -> each.is(Tag.NOT_FOR_CHILDREN) ? "No" : "Yes, nothing speaks against it");
    String chosen = labels.notForChildren().map(why -> why.isEmpty() ? "yes" : "no").orElse("");
    return List.of(
        Option.of("", unchosen(present), chosen),
        Option.of("yes", "Yes, it suits small children", chosen),
        Option.of("no", "No", chosen));
  }
}
