package org.hedgerow.web.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hedgerow.pictures.Licence;
import org.hedgerow.review.NewPicture;

/**
 * A picture, as fields of a form.
 *
 * @param upload its id; empty while none was sent
 * @param error what is wrong with a file that was just sent
 */
record PictureFields(
    String upload,
    String title,
    String author,
    List<Option> licences,
    String source,
    String error) {

  static PictureFields of(NewPicture picture, String error) {
    return new PictureFields(
        picture.upload(),
        picture.title(),
        picture.author(),
        licences(picture.licence()),
        picture.source(),
        error);
  }

  private static List<Option> licences(String chosen) {
    List<Option> licences = new ArrayList<>();
    licences.add(Option.of("", "Choose …", chosen));
    Arrays.stream(Licence.values())
        .map(licence -> Option.of(licence.id(), words(licence), chosen))
        .forEach(licences::add);
    return licences;
  }

  private static String words(Licence licence) {
    return licence.isForOwnWork() ? licence.label() : licence.label() + " (not for your own work)";
  }
}
