package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.lexicon.Status;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.lexicon.Word;
import org.hedgerow.phonics.Pronunciation;
import org.hedgerow.phonics.Sound;

/** Everything about a word in short, so that before and after can be compared. */
record WordFacts(Lexicon lexicon) {

  List<Fact> of(Optional<Word> word) {
    return word.map(this::of).orElse(List.of());
  }

  private List<Fact> of(Word word) {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new Fact(
            "Stands behind it",
            word.status() == Status.APPROVED ? "a reviewer" : "a dictionary only"));
    word.pronunciations().forEach(said -> facts.add(said(said)));
    facts.add(new Fact("How common", ReviewWording.commonness(word.commonness())));
    word.tags().forEach(tag -> facts.add(new Fact(name(tag), value(tag))));
    return facts;
  }

  private Fact said(Pronunciation said) {
    String letters =
        said.alignment()
            .map(
                alignment ->
                    alignment.spans().stream()
                        .map(span -> span.grapheme().text())
                        .collect(joining("·")))
            .orElse("letters unexplained");
    return new Fact(
        "Said in " + lexicon.accent(said.accent()).orElseThrow().accent().name(),
        "/%s/ %s".formatted(Sound.spaced(said.sounds()), letters));
  }

  private static String name(Tag tag) {
    return switch (tag.kind()) {
      case Tag.PICTURABLE -> "Can it be drawn";
      case Tag.PART_OF_SPEECH -> "What it does in a sentence";
      case Tag.NOT_FOR_CHILDREN -> "Not for small children";
      case Tag.PICTURE -> "Picture";
      case Tag.NAME -> "Only a name";
      case Tag.INFLECTED, Tag.BASE -> "A form of";
      case Tag.MEANING -> "About";
      case Tag.STARTER -> "In the starter set";
      default -> tag.kind();
    };
  }

  private static String value(Tag tag) {
    return switch (tag.kind()) {
      case Tag.PICTURABLE -> ReviewWording.picturable(Fields.number(tag.value(), 0));
      case Tag.PART_OF_SPEECH ->
          tag.values().stream().map(ReviewWording::partOfSpeech).collect(joining("; "));
      default -> tag.value();
    };
  }
}
