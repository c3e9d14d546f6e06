package org.hedgerow.review;

import java.util.ArrayList;
import java.util.List;
import org.hedgerow.accounts.FieldFault;
import org.hedgerow.lexicon.Picture;
import org.hedgerow.pictures.Licence;

/** Who made a picture, and on what terms it may be used. */
final class Attribution {
  private static final int LONGEST = 200;

  private Attribution() {}

  static List<FieldFault> faults(NewPicture picture) {
    List<FieldFault> faults = new ArrayList<>();
    require(picture.title(), "title", "Say what the picture shows.", faults);
    require(picture.author(), "author", "Say who made the picture.", faults);
    if (Licence.of(picture.licence()).isEmpty()) {
      faults.add(new FieldFault("licence", "Choose the licence that the picture is under."));
    }
    if (picture.source().length() > LONGEST) {
      faults.add(tooLong("source"));
    }
    return faults;
  }

  private static void require(String text, String field, String missing, List<FieldFault> faults) {
    if (text.isEmpty()) {
      faults.add(new FieldFault(field, missing));
    } else if (text.length() > LONGEST) {
      faults.add(tooLong(field));
    }
  }

  private static FieldFault tooLong(String field) {
    return new FieldFault(field, "At most %d characters.".formatted(LONGEST));
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
