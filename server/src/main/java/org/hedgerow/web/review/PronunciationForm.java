package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.NewPronunciation;

/** The form of another way to say a word. */
final class PronunciationForm extends KindForm<NewPronunciation> {
  PronunciationForm() {
    super(
        NewPronunciation.class,
        "Another way to say a word",
        "For your own accent, or a second way in which many people say the word.");
  }

  @Override
  boolean asksForValue() {
    return true;
  }

  @Override
  NewPronunciation read(Fields fields, Lexicon lexicon) {
    String spelling = spelling(fields);
    return new NewPronunciation(
        spelling,
        new ProposedPronunciationReader(lexicon, fields, spelling).read(0),
        fields.text("instead").equals("yes"));
  }

  @Override
  NewPronunciation after(String button, NewPronunciation spoken, Lexicon lexicon) {
    return new NewPronunciation(
        spoken.spelling(), SoundButtons.after(button, spoken.saying(), 0), spoken.instead());
  }

  @Override
  ProposalFields show(NewPronunciation spoken, Lexicon lexicon, FieldErrors errors) {
    PronunciationFields block =
        new PronunciationFieldsMaker(lexicon, spoken.spelling(), errors).one(spoken.saying());
    return ProposalFields.ofWord(spoken.spelling(), lexicon)
        .with(SpokenFields.ofPronunciation(block, spoken.instead()));
  }

  @Override
  List<Fact> describe(NewPronunciation spoken, Lexicon lexicon) {
    return List.of(
        new Fact(
            "Takes the place of",
            spoken.instead() ? "what the bank has in this accent" : "nothing: it is added"));
  }
}
