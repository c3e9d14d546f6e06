package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

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

  static WordLabels read(Fields fields) {
    return new WordLabels(
        level(fields, "commonness"),
        level(fields, "picturable"),
        fields.all("partsOfSpeech").stream().filter(part -> !part.isEmpty()).toList(),
        List.of(),
        suits(fields));
  }

  private static Optional<Integer> level(Fields fields, String name) {
    int level = Fields.number(fields.text(name), -1);
    return level < 0 ? Optional.empty() : Optional.of(level);
  }

  /** A reason means no; an empty one means yes. */
  private static Optional<String> suits(Fields fields) {
    return switch (fields.text("suits")) {
      case "yes" -> Optional.of("");
      case "no" -> Optional.of(fields.text("unfit").isEmpty() ? NO_REASON : fields.text("unfit"));
      default -> Optional.empty();
    };
  }

  static List<Fact> facts(WordLabels labels) {
    return List.of(
        new Fact("How common", labels.commonness().map(ReviewWording::commonness).orElse("")),
        new Fact("Can it be drawn", labels.picturable().map(ReviewWording::picturable).orElse("")),
        new Fact(
            "What it does in a sentence",
            labels.partsOfSpeech().stream()
                .map(ReviewWording::partOfSpeech)
                .collect(joining("; "))),
        new Fact(
            "For small children",
            labels
                .notForChildren()
                .map(why -> why.isEmpty() ? "Yes" : "No: %s".formatted(why))
                .orElse("")));
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
