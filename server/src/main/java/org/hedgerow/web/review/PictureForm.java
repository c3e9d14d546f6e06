package org.hedgerow.web.review;

import java.util.List;
import java.util.Optional;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.pictures.Licence;
import org.hedgerow.review.NewPicture;

/** The form of a picture; it serves whatever its word serves. */
final class PictureForm extends KindForm<NewPicture> {
  PictureForm() {
    super(
        NewPicture.class, "A picture", "A drawing or a photograph that shows what the word means.");
  }

  @Override
  NewPicture read(Fields fields, Lexicon lexicon) {
    return new NewPicture(
        spelling(fields),
        fields.text("upload"),
        fields.text("title"),
        fields.text("author"),
        fields.text("licence"),
        fields.text("source"));
  }

  @Override
  ProposalFields show(NewPicture picture, Lexicon lexicon, FieldErrors errors) {
    return ProposalFields.ofWord(picture.spelling(), lexicon)
        .with(PictureFields.of(picture, errors.at("upload")));
  }

  @Override
  List<Fact> describe(NewPicture picture, Lexicon lexicon) {
    return List.of(
        new Fact("It shows", picture.title()),
        new Fact("Made by", picture.author()),
        new Fact(
            "Licence", Licence.of(picture.licence()).map(Licence::label).orElse(picture.licence())),
        new Fact("From", picture.source()));
  }

  @Override
  Optional<String> picture(NewPicture picture) {
    return Optional.of(picture.upload());
  }
}
