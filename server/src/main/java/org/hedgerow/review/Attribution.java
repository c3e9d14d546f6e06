package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.operations.FieldError;
import org.hedgerow.pictures.Licence;

/** Who made a picture, and on what terms it may be used. */
final class Attribution {
  private static final int MAX_LENGTH = 200;

  private Attribution() {}

  static List<FieldError> errors(NewPicture picture) {
    List<FieldError> errors = new ArrayList<>();
    require(picture.title(), "title", "Say what the picture shows.", errors);
    require(picture.author(), "author", "Say who made the picture.", errors);
    if (Licence.of(picture.licence()).isEmpty()) {
      errors.add(new FieldError("licence", "Choose the licence that the picture is under."));
    }
    if (picture.source().length() > MAX_LENGTH) {
      errors.add(tooLong("source"));
    }
    return errors;
  }

  private static void require(String text, String field, String missing, List<FieldError> errors) {
    if (text.isEmpty()) {
      errors.add(new FieldError(field, missing));
    } else if (text.length() > MAX_LENGTH) {
      errors.add(tooLong(field));
    }
  }

  private static FieldError tooLong(String field) {
    return new FieldError(field, "At most %d characters.".formatted(MAX_LENGTH));
  }

  /**
   * @param id of the picture in the bank
   */
  static Picture picture(NewPicture proposal, Upload upload, String id) {
    Licence licence = Licence.of(proposal.licence()).orElseThrow();
    return new Picture(
        id,
        proposal.title(),
        proposal.author(),
        licence.label(),
        licence.href(),
        proposal.source(),
        upload.picture().content().fingerprint(),
        upload.picture().mediaType(),
        upload.picture().content());
  }
}
