package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.review.Retag;

/** The form of what else is known of a word. */
final class TagsForm extends KindForm<Retag> {
  TagsForm() {
    super(
        Retag.class,
        "Other details",
        "How common it is, whether it can be drawn, whether it suits small children.");
  }

  @Override
  boolean asksForValue() {
    return true;
  }

  @Override
  Retag read(Fields fields, Lexicon lexicon) {
    return new Retag(spelling(fields), LabelsView.read(fields));
  }

  @Override
  ProposalFields show(Retag retag, Lexicon lexicon, FieldErrors errors) {
    return ProposalFields.ofWord(retag.spelling(), lexicon)
        .with(LabelsView.of(retag.labels(), lexicon.word(retag.spelling())));
  }

  @Override
  List<Fact> describe(Retag retag, Lexicon lexicon) {
    return LabelsView.facts(retag.labels());
  }
}
