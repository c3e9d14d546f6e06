package org.hedgerow.web.review;

import java.util.List;
import org.hedgerow.lexicon.Lexicon;
import org.hedgerow.phonics.AccentCatalogue;
import org.hedgerow.review.NewSentence;

/** A sentence, as fields of a form. */
record SentenceView(String text, List<Option> values, List<Option> accents) {

  static SentenceView of(NewSentence sentence, Lexicon lexicon) {
    String value = sentence.phonogram() + " " + sentence.value();
    return new SentenceView(
        sentence.text(),
        new ValueOptions(lexicon).options("Choose …", sentence.phonogram().isEmpty() ? "" : value),
        lexicon.accents().stream()
            .map(AccentCatalogue::accent)
            .map(
                each ->
                    new Option(each.tag(), each.name(), sentence.accents().contains(each.tag())))
            .toList());
  }
}
