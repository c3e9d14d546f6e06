package org.hedgerow.web.review;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.NewSentence;

/** The form of a sentence, which names the value that it is for. */
final class SentenceForm extends KindForm<NewSentence> {
  SentenceForm() {
    super(
        NewSentence.class,
        "A sentence",
        "A short sentence for one phonogram, with that phonogram three times.");
  }

  @Override
  boolean isOfferedFor(boolean known) {
    return false;
  }

  @Override
  NewSentence read(Fields fields, Lexicon lexicon) {
    String[] value = fields.text("value").split(" ", 2);
    return new NewSentence(
        fields.text("text"),
        value[0],
        value.length == 2 ? Fields.number(value[1], 0) : 0,
        fields.all("accents"));
  }

  @Override
  ProposalFields show(NewSentence sentence, Lexicon lexicon, FieldErrors errors) {
    return ProposalFields.ofSentence().with(SentenceView.of(sentence, lexicon));
  }

  @Override
  List<Fact> describe(NewSentence sentence, Lexicon lexicon) {
    return List.of(
        new Fact(
            "For",
            sentence.phonogram().isEmpty()
                ? ""
                : new ValueOptions(lexicon).words(target(sentence, ""))),
        new Fact(
            "Right in",
            sentence.accents().stream()
                .map(tag -> Describer.accentName(tag, lexicon))
                .collect(joining(", "))));
  }

  @Override
  String target(NewSentence sentence, String wantedFor) {
    return sentence.phonogram() + " " + sentence.value();
  }
}
