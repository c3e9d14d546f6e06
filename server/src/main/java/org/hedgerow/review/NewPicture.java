package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Tag;
import org.hedgerow.operations.FieldError;

/**
 * A picture of what a word of the bank means.
 *
 * @param upload the id of the picture, which was sent before
 * @param title what it shows
 * @param author who made it
 * @param licence the id of one of the {@link org.hedgerow.pictures.Licence licences}
 * @param source where it comes from; may be empty for one's own work
 */
public record NewPicture(
    String spelling, String upload, String title, String author, String licence, String source)
    implements Proposal {
  public NewPicture {
    spelling = Given.text(spelling);
    upload = Given.text(upload);
    title = Given.text(title);
    author = Given.text(author);
    licence = Given.text(licence);
    source = Given.text(source);
  }

  @Override
  public ContributionKind kind() {
    return ContributionKind.PICTURE;
  }

  @Override
  public String subject() {
    return spelling;
  }

  @Override
  public List<FieldError> errors(BankSnapshot snapshot) {
    List<FieldError> errors = new ArrayList<>(snapshot.missing(spelling));
    if (snapshot.uploads().apply(upload).isEmpty()) {
      errors.add(new FieldError("upload", "Choose a picture: PNG, JPEG or SVG."));
    }
    errors.addAll(Attribution.errors(this));
    return errors;
  }

  /** The same picture may be proposed again with another author, and both editions are right. */
  @Override
  public Change change(BankSnapshot snapshot, String source) {
    String id = source.replace(' ', '-');
    return Change.of(
        snapshot.word(spelling).orElseThrow().tagged(new Tag(Tag.PICTURE, id, source)).approved(),
        Attribution.picture(this, snapshot.uploads().apply(upload).orElseThrow(), id));
  }

  @Override
  public String summary() {
    return "Picture of %s.".formatted(spelling);
  }
}
